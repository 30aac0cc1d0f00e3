import type { CylinderNumber, Engine } from '../engine/index.js';
import type { Angle } from '../quantity/index.js';
import { compose, listed } from './compose.js';
import { type CrankPose, crankPose, type Pose, pinAbove, strokeWord } from './crank-pose.js';
import { boundsOf } from './extent.js';
import type { Figure, Touch } from './figure.js';
import { firingSentence, LONGEST_SENTENCE } from './firing-words.js';
import { engineCase } from './front-case.js';
import { damper } from './front-damper.js';
import { inBank, type View } from './front-frame.js';
import { runningGear } from './front-gear.js';
import { degreesWord, lettering, rounded } from './front-letters.js';
import { at, inDegrees } from './geometry.js';
import type { FrontViewOptions } from './options.js';
import { label } from './shapes.js';
import { type Scale, scaleFor } from './sheet-scale.js';
import { type DrawnSizes, drawnSizes } from './sizes.js';

/**
 * The engine seen from the front, cut through one cylinder of each bank, at a crank angle [rad] counted from firing TDC of
 * cylinder 1 in the running sense. The other cylinders show their crankpins. Sizes missing in the sheet are drawn in usual
 * proportion and the description says which.
 */
export function frontView(engine: Engine, crankAngle: Angle, options: FrontViewOptions = {}): Figure {
  const crank = crankPose(engine, crankAngle);
  const view: View = {
    engine,
    crank,
    sizes: drawnSizes(engine),
    shown: shownCylinders(engine, crank, options.cylinder),
    bankAngles: engine.layout.banks.map((bank) => inDegrees(bank.angle)),
  };
  const body = [...engineCase(view), ...runningGear(view)];
  const rough = boundsOf(body, [], 0);
  // A tall engine gets a wider page, so that it does not run off a phone screen.
  const scale = scaleFor(Math.max(rough.width, rough.height * 0.8), options);
  const shapes = [...body, ...damper(view, crankAngle, scale), ...lettering(view, crankAngle, scale)];
  return compose({
    title: `${engine.name}: front view`,
    description: describe(view, crankAngle),
    shapes,
    touches: view.shown.map((pose) => touch(view, pose, scale)),
    frame: [label(at(0, 0), LONGEST_SENTENCE, scale.text)],
    margin: scale.margin,
    leastWidth: rough.height * 0.8,
  });
}

/** One cylinder of each bank: the wanted one and its neighbours of the same row. */
function shownCylinders(engine: Engine, crank: CrankPose, wanted?: CylinderNumber): readonly Pose[] {
  const rows = engine.layout.banks.map((bank) =>
    engine.layout.cylinders.filter((each) => each.bank === bank.id).sort((a, b) => a.place - b.place),
  );
  const row = Math.max(0, ...rows.map((cylinders) => cylinders.findIndex((each) => each.number === wanted)));
  return rows.flatMap((cylinders) => {
    const cylinder = cylinders[Math.min(row, cylinders.length - 1)];
    const pose = cylinder === undefined ? undefined : crank.poses.get(cylinder.number);
    return pose === undefined ? [] : [pose];
  });
}

function describe(view: View, crankAngle: Angle): readonly string[] {
  const { engine, crank, shown, sizes } = view;
  const { layout } = engine;
  const banks = layout.banks.map((bank) => bankWords(bank.id, inDegrees(bank.angle))).join('; ');
  return [
    `Seen from the front at ${degreesWord(crankAngle)} after firing TDC of cylinder 1, turning ${layout.rotation}.`,
    layout.form === 'inline' && layout.banks.length === 1 ? '' : `Banks: ${banks}.`,
    ...shown.map((pose) => pistonWords(sizes, pose)),
    `${capital(firingSentence(crank))}.`,
    `Drawn in section: cylinder ${listed(shown.map((pose) => pose.cylinder))}; of the others only the crankpins.`,
    engine.valveGear === undefined ? 'The valve gear is not stated: no cam is drawn.' : '',
    'Block, head, cover, pan, cam place and pointer place are drawn by assumption.',
    crank.note,
    sizes.note,
  ];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function bankWords(id: string, angle: number): string {
  if (Math.abs(angle) < 0.05) return `${id} upright`;
  return `${id} ${rounded(Math.abs(angle))}\u00b0 to the ${angle > 0 ? 'right' : 'left'}`;
}

function pistonWords(sizes: DrawnSizes, pose: Pose): string {
  const topAt = sizes.rod + sizes.throw;
  const top = Math.sqrt(topAt ** 2 - sizes.pinOffset ** 2);
  const drop = Math.max(0, top - pinAbove(sizes, pose.pastAxis));
  const where = drop < 0.05 ? 'at the top' : `${rounded(drop)} mm down`;
  const stroke = pose.phase === undefined ? '' : `, ${strokeWord(pose.phase)}`;
  return `Cylinder ${pose.cylinder}: piston ${where}${stroke}.`;
}

function touch({ sizes }: View, pose: Pose, scale: Scale): Touch {
  const name = `cylinder ${pose.cylinder}${pose.phase === undefined ? '' : `, ${strokeWord(pose.phase)}`}`;
  const middle = pinAbove(sizes, pose.pastAxis);
  return { part: `cylinder ${pose.cylinder}`, name, centre: inBank(pose.bank, middle, 0), reach: scale.reach };
}
