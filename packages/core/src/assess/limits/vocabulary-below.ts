/** Words for block, liners, crankshaft, rods, pistons and rings. */
import { type Phrase, phrase } from './phrase.js';

export const DRIVE: readonly Phrase[] = [
  phrase('chain-slack.movement', ['chain', 'slack']),
  phrase('timing-backlash.backlash', ['gear', 'backlash']),
  phrase('flywheel-runout.total', ['flywheel', 'run-out']),
];

export const HEIGHTS: readonly Phrase[] = [
  phrase('liner-protrusion.neighbours', ['liner', 'protrusion', 'neighbours']),
  phrase('liner-protrusion.between', ['liner', 'protrusion', 'spread']),
  phrase('liner-protrusion.height', ['liner', 'protrusion'], ['fire']),
  phrase('piston-protrusion.tilt', ['piston', 'protrusion', 'across']),
  phrase('piston-protrusion.between', ['piston', 'protrusion', 'spread']),
  phrase('piston-protrusion.largest', ['piston', 'protrusion', 'largest'], ['gasket']),
  phrase('piston-protrusion.height', ['piston', 'protrusion'], ['gasket']),
  phrase('injector-protrusion.height', ['injector', 'protrusion']),
  phrase('deck-clearance.tilt', ['deck', 'clearance', 'across']),
  phrase('deck-clearance.tilt', ['piston', 'below the deck', 'across']),
  phrase('deck-clearance.between', ['deck', 'clearance', 'spread']),
  phrase('deck-clearance.between', ['piston', 'below the deck', 'spread']),
  phrase('deck-clearance.depth', ['deck', 'clearance']),
  phrase('deck-clearance.depth', ['piston', 'below the deck']),
];

export const LINERS: readonly Phrase[] = [
  phrase('dry-liner.*', ['liner', 'repair', 'outside']),
  phrase('liner-fire-rim.height', ['liner', 'fire']),
  phrase('liner-flange.thickness', ['liner', 'flange', 'thickness']),
  phrase('liner.clearance-upper', ['liner', 'clearance', 'below the flange']),
  phrase('liner.clearance-upper', ['liner', 'clearance', 'upper']),
  phrase('liner.clearance-lower', ['liner', 'clearance', 'lower']),
  phrase('liner.clearance-flange', ['liner', 'clearance', 'flange']),
  phrase('liner-upper-outside.*', ['liner', 'outside', 'below the flange']),
  phrase('liner-upper-outside.*', ['liner', 'outside', 'upper'], ['flange']),
  phrase('liner-lower-outside.*', ['liner', 'outside', 'lower']),
  phrase('liner-flange-outside.*', ['liner', 'outside', 'flange']),
  phrase('counterbore-depth.spread', ['counterbore', 'depth', 'spread']),
  phrase('counterbore-depth.depth', ['counterbore', 'depth']),
  phrase('counterbore.*', ['counterbore']),
  phrase('liner-upper-seat.*', ['block', 'liner', 'bore', 'upper']),
  phrase('liner-lower-seat.*', ['block', 'liner', 'bore', 'lower']),
];

export const PINS: readonly Phrase[] = [
  phrase('pin.clearance-in-rod', ['piston pin', 'clearance', 'rod'], ['ring']),
  phrase('pin.clearance-in-piston', ['piston pin', 'clearance', 'piston'], ['ring', 'deck']),
  phrase('small-end-bush.*', ['rod', 'bush', 'outside']),
  phrase('pin-bore.*', ['piston', 'piston pin', 'bore'], ['rod']),
  phrase('pin-length.length', ['piston pin', 'length'], ['rod']),
  phrase('piston-pin.*', ['piston pin', 'diameter'], ['rod', 'crank']),
  phrase('piston-pin.*', ['piston pin', 'out of round'], ['rod', 'crank', 'bore', 'cylinder', 'liner']),
  phrase('piston-pin.*', ['piston pin', 'taper'], ['rod', 'crank', 'bore', 'cylinder', 'liner']),
  phrase('pin-mass.between', ['piston pin', 'mass', 'spread'], ['rod', 'less the pin']),
  phrase('pin-mass.mass', ['piston pin', 'mass'], ['rod', 'less the pin']),
];

export const RINGS: readonly Phrase[] = [
  phrase('ring-back-?.depth', ['ring', 'back', 'clearance']),
  phrase('ring-back-?.depth', ['ring', 'depth', 'land']),
  phrase('ring-mass.mass', ['ring', 'mass'], ['piston', 'spread']),
  phrase('ring-tension-?.pull', ['ring', 'tension']),
  phrase('ring-gap-?.gap', ['ring', 'gap']),
  phrase('ring-groove-?.clearance', ['ring', 'clearance']),
  phrase('ring-groove-?.clearance', ['groove', 'clearance']),
  phrase('groove-width-?.width', ['groove', 'width']),
  phrase('ring-width-?.width', ['ring', 'width']),
  phrase('ring-width-?.width', ['ring', 'thickness']),
];

export const PISTONS: readonly Phrase[] = [
  phrase('piston-mass.between', ['piston', 'mass', 'spread']),
  phrase('piston-mass.mass', ['piston', 'mass']),
  phrase('compression-height.height', ['piston', 'compression']),
  phrase('crown-volume.volume', ['piston', 'dish', 'volume']),
  phrase('piston.clearance', ['piston', 'clearance']),
  phrase('piston-skirt.diameter', ['piston', 'diameter']),
];

export const CRANKSHAFT: readonly Phrase[] = [
  phrase('main-alignment.gap', ['main', 'alignment']),
  phrase('crank-end-float.float', ['crank', 'end float']),
  phrase('crank-runout.total', ['crank', 'run-out']),
  phrase('thrust-washer.thickness', ['thrust', 'thickness'], ['bore']),
  phrase('thrust-width.width', ['crank', 'thrust', 'width']),
  phrase('thrust-bearing-width.width', ['thrust', 'width']),
  phrase('crankpin-width.width', ['crank', 'crankpin', 'width']),
  phrase('main-shell.wall', ['main', 'wall']),
  phrase('main-bearing.clearance', ['main', 'clearance'], ['cam', 'rod']),
  phrase(['main-journal.*', 'crankpin.*'], ['crank', 'main', 'crankpin']),
  phrase('main-journal.*', ['main', 'journal']),
  phrase('main-journal.*', ['crank', 'main', 'diameter'], ['bore']),
  phrase('main-bearing-bore.diameter', ['main', 'bore', 'installed']),
  phrase('main-housing.*', ['main', 'bore']),
  phrase('crankpin.*', ['crank', 'crankpin'], ['rod']),
  phrase('crankpin.*', ['crank', 'rod', 'journal']),
  phrase(['main-journal.*', 'crankpin.*'], ['crank', 'journal']),
  phrase('fillet-radius.largest', ['fillet']),
  phrase('stroke.length', ['stroke']),
];

export const RODS: readonly Phrase[] = [
  phrase('bolt-length.length', ['bolt', 'length']),
  phrase('rod-shell.wall', ['rod', 'bearing', 'wall']),
  phrase('rod-side-clearance.clearance', ['rod', 'side']),
  phrase('rod-bearing.clearance', ['rod', 'clearance']),
  phrase('rod-big-end-mass.between', ['rod', 'big end', 'mass', 'spread']),
  phrase('rod-small-end-mass.between', ['rod', 'small end', 'mass', 'spread']),
  phrase('rod-mass.between', ['rod', 'mass', 'spread']),
  phrase('rod-big-end-mass.mass', ['rod', 'big end', 'mass']),
  phrase('rod-small-end-mass.mass', ['rod', 'small end', 'mass']),
  phrase('rod-bend.offset', ['rod', 'bend']),
  phrase('rod-twist.offset', ['rod', 'twist']),
  phrase('rod-length.length', ['rod', 'length'], ['bearing', 'bush']),
  phrase('big-end-width.width', ['rod', 'big end', 'width']),
  phrase('small-end-housing.*', ['rod', 'no bush']),
  phrase('small-end-bore.*', ['rod', 'small end', 'bore'], ['big end']),
  phrase('small-end-bore.*', ['rod', 'small end', 'out of round'], ['big end', 'outside']),
  phrase('small-end-bore.*', ['rod', 'small end', 'taper'], ['big end', 'outside']),
  phrase('rod-bearing-bore.diameter', ['rod', 'big end', 'bore', 'installed']),
  phrase('big-end-bore.*', ['rod', 'big end', 'bore']),
  phrase('big-end-bore.*', ['rod', 'big end', 'out of round']),
  phrase('big-end-bore.*', ['rod', 'big end', 'taper']),
];

export const BLOCK: readonly Phrase[] = [
  phrase('bore-ridge.step', ['ridge']),
  phrase('crosshatch.angle', ['crosshatch', 'angle']),
  phrase('bore-wall.thinnest', ['bore', 'wall', 'thickness']),
  phrase('deck-flatness.gap', ['deck', 'flat']),
  phrase('deck-flatness.gap', ['block', 'flat']),
  phrase('deck-height.spread', ['deck', 'height', 'spread']),
  phrase('deck-height.height', ['deck', 'height']),
  phrase('cylinder-bore.*', ['cylinder', 'bore']),
  phrase('cylinder-bore.*', ['block', 'bore']),
  phrase('cylinder-bore.*', ['liner', 'bore']),
  phrase('cylinder-bore.*', ['cylinder', 'out of round']),
  phrase('cylinder-bore.*', ['cylinder', 'taper']),
  phrase('cylinder-bore.*', ['liner', 'out of round']),
];
