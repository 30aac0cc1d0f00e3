import type { CylinderNumber } from '../engine/index.js';
import type { Angle } from '../quantity/index.js';
import { pinAbove } from './crank-pose.js';
import { type Box, joined, overlap, shapeBox, textWidth } from './extent.js';
import type { Shape } from './figure.js';
import { firingSentence } from './firing-words.js';
import { headOutline } from './front-case.js';
import { CENTRE, caseRadius, damperRadius, inBank, pointerHeading, type View } from './front-frame.js';
import { hiddenPins } from './front-gear.js';
import { at, heading, inDegrees, plus, polar, signed, within } from './geometry.js';
import { label } from './shapes.js';
import type { Scale } from './sheet-scale.js';

export function lettering(view: View, crankAngle: Angle, scale: Scale): readonly Shape[] {
  const { sizes, shown, crank, bankAngles } = view;
  const pointer = pointerHeading(bankAngles);
  const outside = damperRadius(sizes) + scale.px * 15;
  const side = signed(pointer) > 20 ? 'start' : 'middle';
  const tdc = label(
    plus(polar(CENTRE, outside, pointer), at(0, side === 'middle' ? -scale.small * 0.4 : 0)),
    'TDC',
    scale.small,
    { anchor: side },
  );
  const numbers = shown.map((pose) =>
    label(
      inBank(pose.bank, pinAbove(sizes, pose.pastAxis) + sizes.crownHeight + scale.text * 0.75, 0),
      String(pose.cylinder),
      scale.text * 1.15,
      { part: `cylinder ${pose.cylinder}` },
    ),
  );
  const names = bankNames(view, scale, [tdc]);
  const below = caseRadius(sizes) + sizes.bore * 0.42 + scale.text * 1.2;
  return [
    tdc,
    ...pinNumbers(view, scale, [tdc, ...numbers, ...names]),
    ...numbers,
    ...names,
    label(at(0, below), degreesWord(crankAngle), scale.text),
    label(at(0, below + scale.text * 1.3), firingSentence(crank), scale.text),
  ];
}

/** One name for each bank; where two would meet, the later one moves a line up. */
function bankNames(view: View, scale: Scale, taken: readonly Shape[]): readonly Shape[] {
  const names: Shape[] = [];
  view.engine.layout.banks.forEach((bank, place) => {
    let name = bankName(view, bank.id, view.bankAngles[place] ?? 0, scale);
    while (name.kind === 'label' && [...taken, ...names].some((other) => overlap(shapeBox(name), shapeBox(other)))) {
      name = { ...name, at: plus(name.at, at(0, -scale.small * 1.2)) };
    }
    names.push(name);
  });
  return names;
}
function bankName(view: View, id: string, bank: number, scale: Scale): Shape {
  const { engine } = view;
  const cylinders = engine.layout.cylinders.filter((each) => each.bank === id).sort((a, b) => a.place - b.place);
  const numbers = cylinders.map((each) => each.number).join(' ');
  const box = joined(headOutline(view, bank).map(shapeBox));
  const flat = Math.abs(heading(bank).y) < 0.4;
  // Above the head; for a lying bank further in, above its barrel, where the page is wide.
  const inward = flat ? -Math.sign(heading(bank).x) * view.sizes.bore * 0.8 : 0;
  const text = engine.layout.banks.length > 1 ? `${id}: ${numbers}` : numbers;
  const half = textWidth(text, scale.small) / 2;
  const page = joined(view.bankAngles.flatMap((angle) => headOutline(view, angle).map(shapeBox)));
  const middle = (box.left + box.right) / 2 + inward;
  const x = Math.max(page.left + half, Math.min(middle, page.right - half));
  return label(at(x, box.top - scale.small * 0.8), text, scale.small, { part: `bank ${id}` });
}

/** Cylinder numbers of the hidden pins, those in one direction together; one without room is left out. */
function pinNumbers(view: View, scale: Scale, taken: readonly Shape[]): readonly Shape[] {
  const together = new Map<number, CylinderNumber[]>();
  for (const pose of hiddenPins(view)) {
    const turn = Math.round(pose.crankpin) % 360;
    together.set(turn, [...(together.get(turn) ?? []), pose.cylinder]);
  }
  const drawn: Box[] = taken.map(shapeBox);
  return [...together].flatMap(([turn, cylinders]) => {
    const number = label(polar(CENTRE, view.sizes.throw, turn), cylinders.join(' '), scale.small);
    const box = shapeBox(number);
    if (drawn.some((other) => overlap(box, other))) return [];
    drawn.push(box);
    return [number];
  });
}

export const rounded = (degrees: number): string => String(Math.round(degrees * 10) / 10);

export const degreesWord = (crankAngle: Angle): string => `crank ${rounded(within(inDegrees(crankAngle), 720))}\u00b0`;
