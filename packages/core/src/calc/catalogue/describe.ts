import { describeFault } from '../../quantity/index.js';
import type { CalcFault } from './fault.js';
import { rangeText } from './range.js';

const SHOWN = 60;
const CONTROL = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu;
/** Foreign text on one line and cut to size, so that a fault stays one line. */
const plain = (text: string): string => {
  const flat = [...text.replace(CONTROL, ' ')];
  return flat.length > SHOWN ? `${flat.slice(0, SHOWN).join('')}…` : flat.join('');
};

const placeText = (fault: { readonly input: string; readonly at?: number }): string =>
  fault.at === undefined ? fault.input : `${fault.input}, value ${fault.at}`;

/** One clear line for a reader: which input, what was given, what is valid. */
export function describeCalcFault(fault: CalcFault): string {
  switch (fault.code) {
    case 'unknown-calculation':
      return `no calculation is named "${plain(fault.id)}"${fault.near.length > 0 ? `; near: ${fault.near.join(', ')}` : ''}`;
    case 'inputs-not-named':
      return 'the inputs must be one object of names and values, such as { "stroke": "3.480 in" }';
    case 'unknown-input':
      return `${plain(fault.input)}: no such input; this calculation takes ${fault.known.join(', ')}`;
    case 'missing-input':
      return `${fault.input}: missing; needed is ${fault.expected}`;
    case 'unreadable':
      return `${placeText(fault)}: ${describeFault(fault.fault)}`;
    case 'wrong-shape':
      return `${placeText(fault)}: ${plain(fault.given)} given; needed is ${fault.expected}`;
    case 'not-a-choice':
      return `${placeText(fault)}: "${plain(fault.given)}" given; valid is one of ${fault.choices.join(', ')}`;
    case 'out-of-range':
      return `${placeText(fault)}: ${plain(fault.given)} given; valid is ${rangeText(fault.kind, fault.range, fault.unit)}`;
    case 'empty-list':
      return `${fault.input}: the list is empty; needed is ${fault.expected}`;
    case 'list-too-long':
      return `${fault.input}: ${fault.length} values given; valid is at most ${fault.limit}`;
    case 'conflict':
      return conflictText(fault);
    case 'no-answer':
      return `${fault.output}: these inputs have no finite answer`;
  }
}

function conflictText(fault: Extract<CalcFault, { code: 'conflict' }>): string {
  const given = Object.entries(fault.given).map(([input, text]) => `${input} ${plain(text)}`);
  const must =
    fault.must && `; ${fault.must.input} must be ${rangeText(fault.must.kind, fault.must.range, fault.must.unit)}`;
  return `${given.join(', ')}: ${fault.because}${must ?? ''}`;
}
