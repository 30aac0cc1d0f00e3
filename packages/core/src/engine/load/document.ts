import {
  type Document,
  type ErrorCode,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
} from 'yaml';
import { done, type Outcome, refused } from '../../quantity/outcome.js';
import { controlCharacter, faultBeforeParsing } from './before-parsing.js';
import { DEEPEST, MOST_FAULTS, MOST_VALUES } from './bounds.js';
import { oneLine, type SheetFault } from './fault.js';

export type Path = readonly (string | number)[];
export interface Position {
  readonly line: number;
  readonly column: number;
}
/** The sheet as plain data, and where each of its values stands in the text. */
export interface SheetDocument {
  readonly data: Readonly<Record<string, unknown>>;
  /** Place of the value; of its nearest surrounding value where the path itself is not in the text. */
  readonly positionOf: (path: Path) => Position | undefined;
  /** A number as it was written, so that a trailing zero is kept; undefined for anything else. */
  readonly writtenAt: (path: Path) => string | undefined;
}

/** `joints[0].stages[2].torque` */
export function pathText(path: Path): string {
  return path.reduce<string>(
    (text, step) => (typeof step === 'number' ? `${text}[${step}]` : text === '' ? step : `${text}.${step}`),
    '',
  );
}

const key = (path: Path) => JSON.stringify(path);

/** Text to data with positions. Refuses what is not a YAML mapping, says each fault's line, and never throws. */
export function readDocument(text: string): Outcome<SheetDocument, readonly SheetFault[]> {
  const early = faultBeforeParsing(text);
  if (early !== undefined) return refused([early]);
  const lines = new LineCounter();
  let parsed: Document.Parsed;
  try {
    parsed = parseDocument(text, { lineCounter: lines, prettyErrors: false, uniqueKeys: false, stringKeys: true });
  } catch {
    return refused([tooDeep()]);
  }
  const at = (offset: number): Position => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(1, line), column: Math.max(1, col) };
  };
  if (parsed.errors.length > 0) return refused(parsed.errors.slice(0, MOST_FAULTS).map((each) => yamlFault(each, at)));
  if (!isMap(parsed.contents)) {
    const what = isSeq(parsed.contents) ? 'a list' : parsed.contents === null ? 'nothing' : 'a single value';
    const message = `the sheet holds ${what}; a sheet is a mapping of keys, beginning with a line such as "gudgeon: 1"`;
    return refused([{ code: 'not-a-mapping', message, path: '', line: 1, column: 1 }]);
  }
  return collect(parsed.contents, at);
}

const SENTENCES: Readonly<Partial<Record<ErrorCode, string>>> = {
  BAD_INDENT: 'the line is not indented as the lines around it; entries of one list or mapping begin in one column',
  BAD_SCALAR_START: 'a text cannot begin with this character; put the text in quotes',
  BLOCK_AS_IMPLICIT_KEY: 'two colons in one line; put a text that holds ": " in quotes',
  MISSING_CHAR: 'something is missing here: a colon after a key, a comma, or a closing bracket or quote',
  MULTIPLE_DOCS: 'a second sheet begins here ("---"); one file holds one sheet',
  TAB_AS_INDENT: 'indented with a tab; use blanks',
  MULTILINE_IMPLICIT_KEY: 'a key runs over several lines; is a colon or a closing bracket missing?',
  UNEXPECTED_TOKEN: 'this does not belong here; put a text with special characters in quotes',
};

function tooDeep(): SheetFault {
  return {
    code: 'too-deep',
    message: `the text nests deeper than YAML can be read; a sheet nests at most ${DEEPEST} deep`,
    path: '',
  };
}

function yamlFault(error: { code: ErrorCode; pos: [number, number] }, at: (offset: number) => Position): SheetFault {
  if (error.code === 'RESOURCE_EXHAUSTION') return tooDeep();
  const place = at(error.pos[0]);
  const what = SENTENCES[error.code] ?? `not written as YAML (${error.code.toLowerCase().replaceAll('_', ' ')})`;
  return { code: 'not-yaml', message: `line ${place.line}: ${what}`, path: '', ...place };
}

/** Walks the parsed nodes once, turning them into plain data and noting positions. */
function collect(root: Node, at: (offset: number) => Position): Outcome<SheetDocument, readonly SheetFault[]> {
  const positions = new Map<string, Position>();
  const written = new Map<string, string>();
  const faults: SheetFault[] = [];
  let values = 0;
  const refuse = (code: string, message: string, path: Path, place: Position | undefined) => {
    if (faults.length < MOST_FAULTS) faults.push({ code, message: oneLine(message), path: pathText(path), ...place });
  };
  const visit = (node: unknown, path: Path): unknown => {
    const place = hasRange(node) ? at(node.range[0]) : undefined;
    if (place !== undefined && !positions.has(key(path))) positions.set(key(path), place);
    values++;
    if (values > MOST_VALUES) {
      if (values === MOST_VALUES + 1) refuse('too-many', `the sheet has more than ${MOST_VALUES} values`, path, place);
      return undefined;
    }
    if (path.length > DEEPEST) {
      refuse('too-deep', `line ${place?.line}: a sheet nests at most ${DEEPEST} deep`, path.slice(0, 3), place);
      return undefined;
    }
    if (isAlias(node)) {
      refuse(
        'alias',
        `${pathText(path)}: aliases ("*${node.source}") are not used in sheets; write the value out`,
        path,
        place,
      );
      return undefined;
    }
    if (isSeq(node)) return node.items.map((item, index) => visit(item, [...path, index]));
    if (isMap(node)) return visitMap(node.items, path);
    if (!isScalar(node)) return null;
    // An escape in quotes ("\u001b") brings in what the text itself may not hold.
    const strange = typeof node.value === 'string' ? controlCharacter(node.value) : undefined;
    if (strange !== undefined)
      refuse('not-text', `${pathText(path)}: character ${strange.name} does not belong in a sheet`, path, place);
    if (typeof node.value === 'number' && node.source !== undefined) written.set(key(path), node.source);
    return typeof node.value === 'bigint' ? Number(node.value) : node.value;
  };
  const visitMap = (pairs: readonly Pair[], path: Path): Record<string, unknown> => {
    const result: Record<string, unknown> = Object.create(null);
    const seen = new Map<string, Position | undefined>();
    for (const pair of pairs) {
      const name = isScalar(pair.key) ? String(pair.key.value) : '';
      const place = hasRange(pair.key) ? at(pair.key.range[0]) : undefined;
      const inner = [...path, name];
      if (seen.has(name)) {
        const first = seen.get(name)?.line;
        refuse(
          'key-twice',
          `${pathText(inner)}: the key "${name}" stands twice (first on line ${first}); keep one`,
          inner,
          place,
        );
        continue;
      }
      seen.set(name, place);
      if (place !== undefined) positions.set(key(inner), place);
      result[name] = visit(pair.value, inner);
    }
    return { ...result };
  };
  const data = visit(root, []) as Record<string, unknown>;
  if (faults.length > 0) return refused(faults);
  const positionOf = (path: Path) => {
    for (let length = path.length; length >= 0; length--) {
      const found = positions.get(key(path.slice(0, length)));
      if (found !== undefined) return found;
    }
    return undefined;
  };
  return done({ data, positionOf, writtenAt: (path) => written.get(key(path)) });
}

function hasRange(node: unknown): node is { readonly range: readonly [number, number, number] } {
  return typeof node === 'object' && node !== null && 'range' in node && Array.isArray(node.range);
}
