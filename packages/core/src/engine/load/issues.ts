import type { z } from 'zod';
import { MOST_FAULTS } from './bounds.js';
import { type Path, pathText, type SheetDocument } from './document.js';
import { oneLine, type SheetFault } from './fault.js';
import { nearestName } from './nearest.js';
import { sheetJsonSchema } from './schema.js';

type Issue = z.core.$ZodIssue;

/** The schema's complaints as faults with a line each: what, where, what is valid. */
export function faultsOfIssues(issues: readonly Issue[], document: SheetDocument): readonly SheetFault[] {
  return issues
    .flatMap((issue) => faultsOfIssue(issue, [], document))
    .slice(0, MOST_FAULTS)
    .map(({ code, message, path }) => ({
      code,
      message: oneLine(message),
      path: pathText(path),
      ...document.positionOf(path),
    }));
}

interface Found {
  readonly code: string;
  readonly message: string;
  readonly path: Path;
}

function faultsOfIssue(issue: Issue, outer: Path, document: SheetDocument): readonly Found[] {
  const path = [...outer, ...issue.path.map((step) => (typeof step === 'number' ? step : String(step)))];
  const given = valueAt(document.data, path);
  const where = pathText(path) === '' ? 'the sheet' : pathText(path);
  const say = (code: string, what: string): readonly Found[] => [{ code, message: `${where}: ${what}`, path }];
  if (given === undefined && issue.code !== 'unrecognized_keys') return say('missing', 'is missing');
  if (given === null) return say('blank', 'is left blank; write a value or take the key out');
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((name) => unknownKey(name, path, where));
    case 'invalid_union':
      return faultsOfUnion(issue, path, given, document, where);
    case 'invalid_value':
      return say('not-one-of', oneOf(given, issue.values.map(String)));
    case 'invalid_type':
      return say('wrong-shape', `must be ${inWords(issue.expected)}, not ${described(given)}`);
    case 'too_big':
      return say('too-big', `${described(given)} is too big; at most ${String(issue.maximum)}${ofWhat(issue.origin)}`);
    case 'too_small':
      return say(
        'too-small',
        `${described(given)} is too small; at least ${String(issue.minimum)}${ofWhat(issue.origin)}`,
      );
    case 'invalid_key':
      return say('bad-name', 'is not usable as a name here; letters, digits and hyphens, at most 40');
    case 'invalid_format':
      return say('bad-name', `${described(given)} is not usable here: ${issue.message}`);
    default:
      return say('wrong-shape', issue.message);
  }
}

function unknownKey(name: string, path: Path, where: string): Found {
  const known = knownKeysAt(path);
  const near = nearestName(name, known);
  const inner = [...path, name];
  const say = (hint: string): Found => {
    const message = `${where}: the key "${name.slice(0, 60)}" is not known; ${hint}`;
    return { code: 'unknown-key', message, path: inner };
  };
  if (near !== undefined) return say(`did you mean "${near}"?`);
  // In { a: b, c: d } an unquoted comma ends the text, and the rest of a sentence looks like a key.
  if (name.includes(' ')) return say('inside { } a text with a comma stands in quotes');
  return say(`known here: ${known.join(', ')}`);
}

/** A union names its branches one by one; a person wrote one of them. The branch with the same shape speaks, else the fewest complaints. */
function faultsOfUnion(
  issue: Extract<Issue, { code: 'invalid_union' }>,
  path: Path,
  given: unknown,
  document: SheetDocument,
  where: string,
): readonly Found[] {
  const fitting = issue.errors.filter((branch) => !hasOtherShape(branch)).sort((a, b) => a.length - b.length);
  const best = fitting[0];
  if (best !== undefined) return best.flatMap((each) => faultsOfIssue(each, path, document));
  const expected = [...new Set(issue.errors.flat().map(expectedOf))].filter((text) => text !== '');
  const message = `${where}: must be ${expected.join(' or ')}, not ${described(given)}`;
  return [{ code: 'wrong-shape', message, path }];
}

/** The branch was meant for a value of another shape: it complains about the value itself, not about something in it. */
function hasOtherShape(branch: readonly Issue[]): boolean {
  return branch.some((each) => {
    if (each.path.length > 0) return false;
    if (each.code === 'invalid_union') return each.errors.every(hasOtherShape);
    return each.code === 'invalid_type' || each.code === 'invalid_value';
  });
}

function expectedOf(issue: Issue): string {
  if (issue.code === 'invalid_type') return inWords(issue.expected);
  if (issue.code === 'invalid_value') return issue.values.map((value) => `"${String(value)}"`).join(' or ');
  if (issue.code === 'invalid_union') return [...new Set(issue.errors.flat().map(expectedOf))].join(' or ');
  return '';
}

function oneOf(given: unknown, values: readonly string[]): string {
  if (typeof given === 'string' && values.includes(given)) return `write ${given} without quotes`;
  const near = typeof given === 'string' ? nearestName(given, values) : undefined;
  const hint = near === undefined ? '' : `; did you mean "${near}"?`;
  return `${described(given)} is not known; one of: ${values.join(', ')}${hint}`;
}

const WORDS: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'a mapping of keys',
  record: 'a mapping of keys',
};
const inWords = (expected: string) => WORDS[expected] ?? expected;
const ofWhat = (origin: string) =>
  origin === 'string' ? ' characters' : origin === 'array' ? ' entries' : origin === 'object' ? ' keys' : '';

function described(given: unknown): string {
  if (Array.isArray(given)) return `a list of ${given.length}`;
  if (typeof given === 'object' && given !== null) return 'a mapping of keys';
  if (typeof given === 'string') return given.length > 40 ? `a text of ${given.length} characters` : `"${given}"`;
  return String(given);
}

function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>((value, step) => {
    if (typeof value !== 'object' || value === null) return undefined;
    return Object.hasOwn(value, step) ? (value as Readonly<Record<string | number, unknown>>)[step] : undefined;
  }, data);
}

interface Described {
  readonly properties?: Readonly<Record<string, Described>>;
  readonly additionalProperties?: Described | boolean;
  readonly items?: Described;
  readonly anyOf?: readonly Described[];
}
/** Made once: it is the same for every sheet, and takes some milliseconds. */
let schemaInWords: Described | undefined;
/** Keys that the schema knows at a place, of every branch that a mapping can take there. */
function knownKeysAt(path: Path): readonly string[] {
  schemaInWords ??= sheetJsonSchema();
  let here: readonly Described[] = branches(schemaInWords);
  for (const step of path) {
    here = here
      .map((each) => (typeof step === 'number' ? each.items : (each.properties?.[step] ?? each.additionalProperties)))
      .filter((each): each is Described => typeof each === 'object')
      .flatMap(branches);
  }
  return [...new Set(here.flatMap((each) => Object.keys(each.properties ?? {})))];
}
function branches(schema: Described): readonly Described[] {
  return [schema, ...(schema.anyOf ?? []).flatMap(branches)];
}
