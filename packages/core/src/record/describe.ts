/** One line of plain words for an entry, for the record page and the printed record. */
import type { ValveId } from '../engine/model.js';
import type { EntryData } from './entry.js';
import type { LogEntry } from './order.js';
import { type KnownData, upcast } from './upcast.js';

const valveWords = ({ cylinder, kind, index }: ValveId): string =>
  `cylinder ${cylinder} ${kind}${index > 1 ? ` ${index}` : ''}`;

const SEEN_WORDS: Readonly<Record<EntryData['act-done']['seen'], string>> = {
  reached: 'reached',
  'turned-and-marked': 'turned and marked',
  loosened: 'loosened',
  held: 'held, nothing turned',
  moved: 'turned before the value',
  within: 'within the window',
  short: 'short',
  beyond: 'too far',
  renewed: 'renewed',
  followed: 'followed',
  'mark-found': 'paint mark found',
};
const ARRIVAL_WORDS: Readonly<Record<EntryData['walk-resumed']['why'], string>> = {
  'opened-again': 'opened again',
  paused: 'after a pause',
  'other-person': 'by another person',
  'struck-out': 'after an act was struck out',
};

/** What the entry says, without who and when. An entry that is not understood here says so. */
export function describeEntry(entry: LogEntry): string {
  const reading = upcast(entry);
  if (reading.understood) return describeKnown(reading.known);
  const why = { 'unknown-kind': 'a kind', 'newer-version': 'a newer version', unreadable: 'data' }[reading.why];
  return `Not understood here: "${entry.kind}" version ${entry.version} holds ${why} that this program does not read.`;
}

const sentence = (...parts: readonly (string | false | undefined)[]): string =>
  parts.filter((part) => part !== undefined && part !== false && part !== '').join(', ');

function describeKnown(known: KnownData): string {
  switch (known.kind) {
    case 'sheet-adopted':
      return sentence(`Sheet "${known.data.name}" adopted`, known.data.reason);
    case 'gasket-checked':
      return sentence(`Gasket of ${known.data.head}, ${known.data.item}: ${known.data.result}`, known.data.seen);
    case 'fastener-placed':
      return describePlaced(known.data);
    case 'act-done':
      return describeAct(known.data);
    case 'walk-resumed':
      return describeResumed(known.data);
    case 'fastener-doubted':
      return `${known.data.joint}, hole ${known.data.hole}, stage ${known.data.stage}: in doubt, ${known.data.why}`;
    case 'joint-opened':
      return `${known.data.joint} opened: ${known.data.reason}`;
    case 'note':
      return known.data.about === '' ? `Note: ${known.data.text}` : `Note on ${known.data.about}: ${known.data.text}`;
    case 'skipped':
      return `Skipped ${known.data.what}: ${known.data.reason}`;
    case 'struck-out':
      return `Entry ${known.data.entry} struck out: ${known.data.reason}`;
    default:
      return describeValveGear(known);
  }
}

function describePlaced(data: EntryData['fastener-placed']): string {
  return sentence(
    `${data.joint}, hole ${data.hole}: fastener ${data.fastener} placed`,
    data.condition,
    data.length?.text,
    data.instance > 1 && `fastener ${data.instance} in this hole`,
    `thread ${data.onThread}`,
    `under head ${data.underHead}`,
  );
}

function describeAct(data: EntryData['act-done']): string {
  return sentence(
    `${data.joint}, stage ${data.stage}, hole ${data.hole}: ${data.target}`,
    SEEN_WORDS[data.seen],
    data.reading?.text,
    data.instance > 1 && `fastener ${data.instance} in this hole`,
    data.round > 1 && `round ${data.round}`,
  );
}

function describeResumed(data: EntryData['walk-resumed']): string {
  const { mark } = data;
  return sentence(
    `${data.joint} resumed at stage ${data.stage}, ${ARRIVAL_WORDS[data.why]}`,
    data.verified.length > 0 && `touched again ${data.verified.join(' ')}`,
    data.roundAgain && 'stage goes round again',
    mark && `paint mark on hole ${mark.hole}: ${mark.answer}`,
  );
}

type ValveGear = Extract<
  KnownData,
  { kind: 'part-tagged' | 'part-fitted' | 'valve-set' | 'valve-rechecked' | 'shim-measured' }
>;

function describeValveGear(known: ValveGear): string {
  switch (known.kind) {
    case 'part-tagged': {
      const { part, valve, condition, end, face } = known.data;
      return sentence(`${part} of ${valveWords(valve)} tagged`, condition, end, face);
    }
    case 'part-fitted': {
      const { part, to, from, end, face, lubricant } = known.data;
      const origin = from === 'new' ? 'new' : `used, from ${valveWords(from)}`;
      return sentence(`${part} fitted at ${valveWords(to)}`, origin, end, face, lubricant);
    }
    case 'valve-set':
      return describeValveSet(known.data);
    case 'valve-rechecked': {
      const { valve, result, lash, seen } = known.data;
      return sentence(`${valveWords(valve)} checked again: ${result}`, lash?.text, seen);
    }
    case 'shim-measured': {
      const { valve, lash, shim } = known.data;
      return sentence(`${valveWords(valve)} measured`, `lash ${lash.text}`, `shim ${shim.text}`);
    }
  }
}

function describeValveSet(data: EntryData['valve-set']): string {
  return sentence(
    `${valveWords(data.valve)} set (${data.adjustment}, ${data.condition})`,
    data.turns !== undefined && `${data.turns} turns`,
    data.plungerTravel && `plunger ${data.plungerTravel.text}`,
    data.lash && `lash ${data.lash.text}`,
    data.shim && `shim ${data.shim.text}`,
    data.crankDegrees !== undefined && `crank at ${data.crankDegrees} deg`,
  );
}
