import { gasketThickness, lobeLift, shimThickness, train } from './from-sheet.js';
import { between, near, ofBore, ofBoreCubed, type TypicalRule, usually } from './typical.js';

const DEG = Math.PI / 180;

/** Camshaft, followers, heads, valves and springs: what their sizes usually are [mm, or shares]. Common practice, no source. */
export const TYPICAL_ABOVE: Readonly<Record<string, TypicalRule>> = {
  'cam-journal': ofBore(0.2, 0.8),
  'lobe-lift': near(lobeLift, 0.15, 0.03, usually(4, 14)),
  'lobe-height': usually(20, 70),
  'lobe-base-runout': usually(0, 0.06),
  'cam-runout': usually(0, 0.12),
  'injector-lobe-lift': usually(2, 12),

  'lifter-bore': ofBore(0.15, 0.45),
  lifter: ofBore(0.15, 0.45),
  'lifter-crown': usually(0, 0.09),
  'bucket-bore': ofBore(0.22, 0.5),
  bucket: ofBore(0.22, 0.5),
  'injector-lifter-bore': ofBore(0.2, 0.5),
  'shim-thickness': shimThickness,
  'pushrod-length': usually(100, 450),
  'pushrod-runout': usually(0, 0.4),
  'rocker-bore': usually(10, 32),
  'rocker-shaft': usually(10, 32),

  'head-flatness': usually(0, 0.2),
  'manifold-flatness': usually(0, 0.5),
  'head-thickness': ofBore(0.7, 1.9),
  'chamber-volume': near(train('chamberVolume'), 0.12, 0.1, ofBoreCubed(0.02, 0.12)),
  'injector-protrusion': usually(1, 6),
  'gasket-thickness': near(gasketThickness, 0.25, 0.35, usually(0.4, 2.5)),

  'valve-guide': usually(5, 13.5),
  'valve-stem': usually(5, 13.5),
  'seat-width': usually(0.7, 4),
  'seat-runout': usually(0, 0.1),
  'seat-angle': between(20 * DEG, 60 * DEG),
  'face-angle': between(20 * DEG, 60 * DEG),
  'face-runout': usually(0, 0.1),
  'valve-margin': usually(0.5, 4),
  'valve-head-diameter': ofBore(0.25, 0.6),
  'valve-length': usually(80, 260),
  'valve-recess': usually(0.3, 2.6),
  'stem-height': usually(25, 90),
  'installed-height': usually(25, 70),
  'retainer-to-guide': usually(5, 25),
  'retainer-to-rocker': usually(0.4, 3.8),

  'spring-free-length': usually(30, 90),
  'spring-squareness': usually(0, 2.5),
  'spring-lean': between(0, 5 * DEG),
  'spring-load-closed': between(100, 900),
  'spring-load-open': between(250, 2200),
  'spring-bind-height': usually(14, 50),
  'spring-pocket': usually(0.3, 2.9),
};
