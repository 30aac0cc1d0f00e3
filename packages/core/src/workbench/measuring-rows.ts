/** Lines of the record for readings, gauges, work that came back and decisions. */
import type { EntryData } from '../record/index.js';
import type { Bench } from './bench.js';
import type { RowWords, Writer } from './row-words.js';
import { slotName } from './slot-names.js';

const together = (...parts: readonly (string | undefined)[]): string =>
  parts.filter((part) => part !== undefined && part !== '').join(', ');

function measuredRow(bench: Bench, data: EntryData['measured']): RowWords {
  const { reading, repeat, instrument, temperature, occasion, answered = [] } = data;
  return {
    what: slotName(bench.engine, data.slot),
    value: together(
      reading.text,
      repeat ? 'second reading' : undefined,
      occasion > 1 ? `occasion ${occasion}` : undefined,
      instrument && `with ${instrument}`,
      temperature && `at ${temperature.text}`,
      ...answered.map((question) => `asked "${question}", answered yes`),
    ),
  };
}

function instrumentRow(_: Bench, data: EntryData['instrument-kept']): RowWords {
  const { low, high, expanded } = data;
  const range =
    low && high ? `${low.text} to ${high.text}` : (low && `from ${low.text}`) || (high && `to ${high.text}`);
  return {
    what: `Instrument ${data.id}: ${data.name}`,
    value: together(
      data.kind.replaceAll('-', ' '),
      `reads ${data.resolution.text}`,
      range,
      expanded && `uncertainty ±${expanded.text} (k = 2)`,
    ),
  };
}

const moments = { start: 'before measuring', between: 'in between', end: 'after measuring' } as const;

export const measuringRows: {
  readonly [K in
    | 'measured'
    | 'instrument-kept'
    | 'instrument-checked'
    | 'temperature-noted'
    | 'work-returned'
    | 'decided']: Writer<K>;
} = {
  measured: measuredRow,
  'instrument-kept': instrumentRow,
  'instrument-checked': (_, data) => ({
    what: `Instrument ${data.instrument}, checked ${moments[data.moment]}`,
    value: `reads ${data.reading.text}`,
    limit: `standard ${data.standard.text}`,
  }),
  'temperature-noted': (_, { room, part, about }) => ({
    what: about === undefined ? 'Temperature' : `Temperature, ${about.replaceAll('-', ' ')}`,
    value: together(room && `room ${room.text}`, part && `part ${part.text}`),
  }),
  'work-returned': (_, { feature, places, why }) => ({
    what: `Work came back: ${feature.replaceAll('-', ' ')} ${places.join(', ')}`,
    value: why,
  }),
  decided: (_, data) => ({
    what: `Decided: ${data.decision.replaceAll('-', ' ')}, ${data.scope.replaceAll('-', ' ')}`,
    value: `${data.words} (${data.reason})`,
    limit: data.figures.map((figure) => `${figure.name} ${figure.text}`).join('; '),
    origin: 'as seen when it was decided',
  }),
};
