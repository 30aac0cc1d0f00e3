import type { ValveCard } from '@gudgeon/core/calc/valve-setting';
import { degrees, parseQuantity } from '@gudgeon/core/quantity';

/** Reading of the flags of `gudgeon valves`: angles are in crank degrees. Each reader adds a line to `problems` for what it cannot use. */
const NUMBER = /^[+-]?(\d+(\.\d*)?|\.\d+)\s*(deg|°)?$/i;

function numberOf(text: string): number | undefined {
  const trimmed = text.trim();
  return NUMBER.test(trimmed) ? Number.parseFloat(trimmed) : undefined;
}

/** One angle in degrees. */
export function readDegrees(flag: string, text: string, problems: string[]): number | undefined {
  const value = numberOf(text);
  if (value === undefined) problems.push(`${flag}: "${text}" is not a number of degrees, such as 5`);
  return value;
}

/** Angles in degrees with commas between them. */
export function readDegreesList(flag: string, text: string, problems: string[]): number[] {
  return text.split(',').flatMap((part) => readDegrees(flag, part, problems) ?? []);
}

/** A firing order, with commas as in 1,3,4,2, with hyphens as the trade writes it, 1-3-4-2, or with blanks. */
export function readOrder(text: string, problems: string[]): number[] {
  const parts = text.trim().split(text.includes(',') ? ',' : text.includes('-') ? '-' : /\s+/);
  return parts.flatMap((part) => {
    if (/^\d+$/.test(part.trim())) return Number(part);
    problems.push(`--order: "${part.trim()}" is not a cylinder number; write an order such as 1,3,4,2`);
    return [];
  });
}

const KEYS = ['io', 'ic', 'eo', 'ec', 'at', 'inadv', 'exadv'];
const VALID = 'io, ic, eo, ec in degrees, and if you like at=0.050in, inadv=280, exadv=290';

/** `io=30,ic=70` as lower-case keys and their texts. */
function readPairs(text: string, problems: string[]): Map<string, string> {
  const pairs = new Map<string, string>();
  for (const part of text.split(',')) {
    const [key = '', value] = part.split('=', 2);
    const name = key.trim().toLowerCase();
    if (value === undefined || !KEYS.includes(name)) {
      problems.push(`--cam: "${part.trim()}" is not understood; valid: ${VALID}`);
    } else if (pairs.has(name)) problems.push(`--cam: ${name} stands twice`);
    else pairs.set(name, value.trim());
  }
  return pairs;
}

function readEvents(pairs: ReadonlyMap<string, string>, problems: string[]): NonNullable<ValveCard['events']> {
  const angle = (key: string) => {
    const text = pairs.get(key);
    if (text === undefined) problems.push(`--cam: ${key} is missing; all of io, ic, eo, ec are needed`);
    return degrees(text === undefined ? 0 : (readDegrees(`--cam ${key}`, text, problems) ?? 0));
  };
  return {
    intakeOpens: angle('io'),
    intakeCloses: angle('ic'),
    exhaustOpens: angle('eo'),
    exhaustCloses: angle('ec'),
  };
}

function readLift(text: string | undefined, problems: string[]): Pick<ValveCard, 'checkingLift'> {
  if (text === undefined) return {};
  const lift = parseQuantity('length', text);
  if (lift.ok) return { checkingLift: { value: lift.value.value } };
  problems.push(`--cam at: "${text}" is not a lift with its unit, such as 0.050in or 1mm`);
  return {};
}

function readAdvertised(pairs: ReadonlyMap<string, string>, problems: string[]): Pick<ValveCard, 'advertisedDuration'> {
  const inText = pairs.get('inadv');
  const exText = pairs.get('exadv');
  if (inText === undefined && exText === undefined) return {};
  if (inText === undefined || exText === undefined || !pairs.has('at')) {
    problems.push('--cam: inadv and exadv are used together, and with at= only');
    return {};
  }
  const intake = readDegrees('--cam inadv', inText, problems);
  const exhaust = readDegrees('--cam exadv', exText, problems);
  return { advertisedDuration: { intake: degrees(intake ?? 0), exhaust: degrees(exhaust ?? 0) } };
}

/** A cam card such as `io=30,ic=70,eo=70,ec=30`; with `at=` the events are at that lift and not at the seat. */
export function readCam(text: string, problems: string[]): ValveCard {
  const pairs = readPairs(text, problems);
  return {
    basis: pairs.has('at') ? 'at-lift' : 'seat',
    events: readEvents(pairs, problems),
    ...readLift(pairs.get('at'), problems),
    ...readAdvertised(pairs, problems),
  };
}
