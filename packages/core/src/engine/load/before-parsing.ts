import { DEEPEST, LONGEST_LINE, MOST_CHARACTERS } from './bounds.js';
import type { SheetFault } from './fault.js';

/**
 * Refuses text that no person would write as a sheet, in one pass and before the YAML parser sees it: the parser
 * takes seconds, or all the memory, over a million nested brackets or a line of a million dashes.
 */
export function faultBeforeParsing(text: string): SheetFault | undefined {
  if (text.length > MOST_CHARACTERS) {
    return whole('too-long', `the sheet has ${text.length} characters; at most ${MOST_CHARACTERS} are read`);
  }
  if (text.trim() === '') return whole('empty', 'the sheet is empty; it begins with a line such as "gudgeon: 1"');
  const strange = strangeCharacter(text);
  if (strange !== undefined) return strange;
  return faultOfLines(text);
}

function faultOfLines(text: string): SheetFault | undefined {
  let line = 1;
  let start = 0;
  let depth = 0;
  for (let at = 0; at <= text.length; at++) {
    const code = at === text.length ? 10 : text.charCodeAt(at);
    if (code === 10) {
      if (at - start > LONGEST_LINE) {
        const message = `line ${line} has ${at - start} characters; at most ${LONGEST_LINE} are read in one line`;
        return { code: 'line-too-long', message, path: '', line, column: 1 };
      }
      line++;
      start = at + 1;
    } else if (code === 0x5b || code === 0x7b) {
      depth++;
      if (depth > 4 * DEEPEST) {
        const message = `line ${line}: more than ${4 * DEEPEST} brackets are open; a sheet nests at most ${DEEPEST} deep`;
        return { code: 'too-deep', message, path: '', line, column: at - start + 1 };
      }
    } else if (code === 0x5d || code === 0x7d) {
      depth = Math.max(0, depth - 1);
    }
  }
  return undefined;
}

/** A character that no text holds, such as "U+001B"; a screen or a terminal might obey it. */
export function controlCharacter(text: string): { readonly at: number; readonly name: string } | undefined {
  const at = text.search(CONTROL);
  if (at < 0) return undefined;
  return { at, name: `U+${text.charCodeAt(at).toString(16).toUpperCase().padStart(4, '0')}` };
}

function strangeCharacter(text: string): SheetFault | undefined {
  const found = controlCharacter(text);
  if (found === undefined) return undefined;
  const before = text.slice(0, found.at).split('\n');
  return {
    code: 'not-text',
    message: `line ${before.length}: character ${found.name} does not belong in a text file; a sheet is plain text in UTF-8`,
    path: '',
    line: before.length,
    column: (before.at(-1)?.length ?? 0) + 1,
  };
}
// biome-ignore lint/suspicious/noControlCharactersInRegex: finding control characters is the purpose
const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\ufffe\uffff]/;

function whole(code: string, message: string): SheetFault {
  return { code, message, path: '' };
}
