import type { OrderLineView, OrderView } from '@gudgeon/core/workbench';
import type { Document, Table } from './document.js';

const TICK = '☐';
const row = (...cells: readonly string[]): Table['rows'][number] => ({ cells, struck: false });

const fitted = ({ fittedTo, places }: OrderLineView): string =>
  fittedTo || (places.some((place) => place.fittedTo !== '') ? 'each place to its own part, see below' : '');

function workTable({ lines, open }: OrderView): Table {
  return {
    title: 'Work to be done',
    columns: ['No.', 'Work', 'Target', 'Tolerance', 'Finish', 'What must be on', 'Done'],
    rows: lines.map(({ number, operation, part, target, tolerance, finish, with: on }) =>
      row(`${number}`, `${operation}: ${part}`, target, tolerance, finish, on, TICK),
    ),
    open,
  };
}

/** Sizes place by place, with room for what the shop measures and with what was measured again. */
function placesTable(line: OrderLineView): Table {
  return {
    title: `Line ${line.number}: ${line.operation}, place by place`,
    columns: ['Place', 'Target', 'Fitted to', 'Measured by the shop', 'Measured again', 'Verdict'],
    rows: line.places.map(({ name, target, fittedTo, returned }) =>
      row(
        name,
        target,
        fittedTo,
        '',
        returned?.words ?? 'not measured: look at it',
        returned?.state.toUpperCase() ?? '',
      ),
    ),
    open: [],
  };
}

/** What does not fit beside a target: the part that it is made for, how, and who decided it. */
function lineNotes(line: OrderLineView): readonly string[] {
  const { by, at, reason } = line.decidedBy;
  const part = fitted(line);
  return [...(part === '' ? [] : [`Fitted to: ${part}.`]), ...line.notes, `Decided by ${by}, ${at}: ${reason}.`];
}
function notesTable({ lines }: OrderView): Table {
  return {
    title: 'Notes to the lines',
    columns: ['No.', 'Note'],
    rows: lines.flatMap((line) => lineNotes(line).map((note) => row(`${line.number}`, note))),
    open: [],
  };
}

function buysTable({ buys }: OrderView): Table {
  return {
    title: 'Parts to buy',
    columns: ['Count', 'Part', 'Number', 'Size', 'For', 'Here'],
    rows: buys.map(({ count, part, partNumber, size, for: use }) => row(`${count}`, part, partNumber, size, use, TICK)),
    open: [],
  };
}

function returnedTable({ lines }: OrderView): Table {
  return {
    title: 'Work that came back',
    columns: ['No.', 'Operation', 'Verdict', 'In words'],
    rows: lines.map(({ number, operation, returned }) =>
      row(`${number}`, operation, returned.state.toUpperCase(), returned.words),
    ),
    open: [],
  };
}

const filled = (table: Table): boolean => table.rows.length > 0 || table.open.length > 0;

/**
 * The order to the machine shop as a document: every line with target, tolerance, finish, what it is fitted to and who decided it; sizes
 * place by place; parts to buy; what came back. Every meaning is in words, so that a black and white print keeps it. Decisions that
 * are still open stand under the work: an order that is not whole says so.
 */
export function orderDocument(view: OrderView): Document {
  return {
    title: view.title,
    lead: [
      ...(view.invented ? ['Invented demonstration engine: no figure here belongs to a real one.'] : []),
      'The engine maker’s manual and the part maker’s sheet outrank every computed figure. All sizes at 20 °C.',
      view.measuredWith.length === 0
        ? 'Measured with: no gauge is named in the record.'
        : `Measured with: ${view.measuredWith.join('; ')}.`,
    ],
    tables: [
      workTable(view),
      ...view.lines.filter(({ places }) => places.length > 0).map(placesTable),
      notesTable(view),
      buysTable(view),
      returnedTable(view),
    ].filter(filled),
    notes: view.cautions.map(
      ({ word, can, because, act }) => `${word}. ${can}: ${because}. ${act.charAt(0).toUpperCase()}${act.slice(1)}.`,
    ),
  };
}
