import { describe, expect, it } from 'vitest';
import { engineWith, readAll, readingsOf } from '../assess/assess.suite.js';
import { assess } from '../assess/index.js';
import { engineOf, Scribe, SHEETS } from './bench.suite.js';
import {
  type FindingView,
  findingView,
  measureView,
  proposeInstrument,
  proposeMeasured,
  worksheetView,
} from './index.js';

const shown = { shownIn: { length: 'mm' }, today: '2026-01-01' } as const;
const scribeOf = () => new Scribe(engineOf(SHEETS.v8));

/** Writes a reading as the screen does: what the gate asks about is answered with yes. */
function read(scribe: Scribe, slot: string, text: string, repeat = false): string {
  const wish = { slot, text, source: 'keyed', repeat } as const;
  const first = proposeMeasured(scribe.bench, wish);
  const proposal = first.ok ? first : proposeMeasured(scribe.bench, { ...wish, answered: [first.fault] });
  if (!proposal.ok) throw new Error(proposal.fault);
  return proposal.value.map(({ kind, data }) => scribe.append({ kind, data } as never)).join();
}
const STATIONS = ['top-thrust', 'top-axial', 'middle-thrust', 'middle-axial', 'bottom-thrust', 'bottom-axial'];
function readBore(scribe: Scribe, cylinder: number, texts: readonly string[]): void {
  STATIONS.forEach((station, i) => {
    read(scribe, `cylinder-bore/${cylinder}/${station}`, texts[i] ?? '');
  });
}
const bores = (scribe: Scribe, more: Partial<Parameters<typeof worksheetView>[2]> = {}) => {
  const view = worksheetView(scribe.bench, 'cylinder-bore', { ...shown, ...more });
  if (!view) throw new Error('no bores');
  return view;
};
const row = (scribe: Scribe, place: string) => bores(scribe).rows.find((one) => one.place === place);
const finding = (scribe: Scribe, place: string, property: string): FindingView | undefined =>
  row(scribe, place)?.findings.find((one) => one.property === property);
const ROUND = Array.from({ length: 6 }, () => '98.610 mm');

describe('a worksheet', () => {
  it('asks for each of six stations of each of eight bores in the order of walking round', () => {
    const view = bores(scribeOf());
    expect(view.order).toHaveLength(48);
    expect(view.current).toBe('cylinder-bore/1/top-thrust');
    // The walk goes down one bank and back along the other: rows follow it.
    expect(view.rows.map((one) => one.place)).toEqual([...new Set(view.order.map((slot) => slot.split('/')[1]))]);
    expect(view.progress.words).toBe('0 of 48 read');
  });
  it('says no data, never in, while a bore is half read', () => {
    const scribe = scribeOf();
    read(scribe, 'cylinder-bore/1/top-thrust', '98.610 mm');
    expect(finding(scribe, '1', 'cylinder-bore.diameter')?.verdict).toBe('no data');
    expect(finding(scribe, '1', 'cylinder-bore.diameter')?.value).toBe('');
    expect(
      measureView(scribe.bench, shown)
        .areas.flatMap((area) => area.sheets)
        .find((one) => one.feature === 'cylinder-bore')?.verdict,
    ).toBe('no data');
  });
  it('names the limit of a bore and where it comes from before anything is read', () => {
    const unread = finding(scribeOf(), '3', 'cylinder-bore.diameter');
    const scribe = scribeOf();
    readBore(scribe, 3, ROUND);
    const read = finding(scribe, '3', 'cylinder-bore.diameter');
    expect(unread).toMatchObject({ verdict: 'no data', value: '', words: 'not read' });
    expect(unread?.limit).not.toBe('');
    expect([unread?.limit, unread?.wearLimit, unread?.origin]).toEqual([read?.limit, read?.wearLimit, read?.origin]);
  });

  it('gives value, limit, origin and distance of a bore that is read', () => {
    const scribe = scribeOf();
    readBore(scribe, 1, ROUND);
    const diameter = finding(scribe, '1', 'cylinder-bore.diameter');
    expect(diameter).toMatchObject({ verdict: 'in', value: '98.610 mm' });
    // Printed for the Quernside 51: 98.600 to 98.618 mm new, 0.15 mm of change from new.
    expect(diameter?.wearLimit).toMatch(/98\.768 mm \(0\.15 mm from new\)/);
    expect(diameter?.origin).toMatch(/Quernside Works book 51/);
    expect(diameter?.working.length).toBeGreaterThan(0);
  });
  it('tells how far a hole may still wear by the high end, a shaft by the low one', () => {
    const scribe = scribeOf();
    readBore(scribe, 1, ROUND);
    // 98.618 + 0.15 = 98.768 mm at most; 98.768 - 98.610.
    expect(finding(scribe, '1', 'cylinder-bore.diameter')).toMatchObject({
      distance: '0.158 mm from the wear limit',
      nearEnd: 'high',
    });
    const stems = () => worksheetView(scribe.bench, 'valve-stem', shown);
    const place = '1-intake-1';
    for (const slot of stems()?.order.filter((one) => one.startsWith(`valve-stem/${place}/`)) ?? [])
      read(scribe, slot, '7.965 mm');
    const stem = stems()?.rows.find((one) => one.place === place)?.findings[0];
    // Printed: 7.930 mm at least; 7.965 - 7.930.
    expect(stem).toMatchObject({ verdict: 'in', distance: '0.035 mm from the wear limit', nearEnd: 'low' });
  });
  it('gives the general rule of wear as advice with its source, apart from the limit', () => {
    const engine = engineWith(['property: valve-stem.diameter, whenNew: "7.970..7.985 mm"']);
    const { findings } = assess(engine, readingsOf(readAll(engine, 'valve-stem', '1-intake-1', '7.960 mm')));
    const stem = findings.find((one) => one.key === 'valve-stem.diameter@1-intake-1');
    if (stem === undefined) throw new Error('no stem');
    const view = findingView(stem, { length: 'mm' });
    // Trade map O07 [R65]: a stem may wear 0.001 in = 0.0254 mm; it has worn 0.010 mm below the smallest new one.
    expect(view.advice?.words).toBe('within a general wear rule of one military manual');
    expect(view.advice?.source).toMatch(/TM 10-3930-647-14&P/);
    expect(view.words).toBe('outside the new range');
    expect(view.wearLimit).toBeUndefined();
  });
  it('leads on to the next sheet with something to read, cross-checks last', () => {
    const scribe = scribeOf();
    const sheet = (feature: string) => worksheetView(scribe.bench, feature, shown);
    expect(sheet('crank-end-float')?.next).toBeUndefined();
    read(scribe, 'crank-end-float/crankshaft/float', '0.165 mm');
    expect(sheet('crank-end-float')).toMatchObject({
      finished: true,
      next: { feature: 'cam-end-float', optional: false },
    });
    read(scribe, 'cam-end-float/camshaft/float', '0.125 mm');
    expect(sheet('cam-end-float')?.next?.feature).toBe('rod-side-clearance');
    expect(sheet('crank-end-float')?.next?.feature).toBe('rod-side-clearance');
  });
  it('gives the same row again where nothing of it has changed, so that a screen need not draw it anew', () => {
    const scribe = scribeOf();
    const before = bores(scribe);
    read(scribe, 'cylinder-bore/1/top-thrust', '98.610 mm');
    const after = bores(scribe);
    const changed = after.rows.filter((one, i) => one !== before.rows[i]).map((one) => one.place);
    expect(changed).toEqual(['1']);
    expect(after.columns).toBe(before.columns);
  });
  it('shows lengths in the unit of the device and leaves readings as they were keyed', () => {
    const scribe = scribeOf();
    readBore(scribe, 1, ROUND);
    const view = bores(scribe, { shownIn: { length: 'in' } });
    // 98.610 / 25.4 = 3.88228.
    expect(view.rows[0]?.findings[0]?.value).toBe('3.8823 in');
    expect(view.rows[0]?.cells[0]?.text).toBe('98.610 mm');
  });
  it('marks a bore past its wear limit out, in its row and on the stations that make it so', () => {
    const scribe = scribeOf();
    readBore(
      scribe,
      1,
      Array.from({ length: 6 }, () => '98.800 mm'),
    );
    const diameter = finding(scribe, '1', 'cylinder-bore.diameter');
    expect(diameter?.verdict).toBe('out');
    // 98.800 less 98.768.
    expect(diameter?.distance).toMatch(/^0\.032 mm above the wear limit$/);
    const { figure } = bores(scribe, { current: 'cylinder-bore/1/top-thrust' });
    expect(figure?.touches[0]?.name).toMatch(/98\.800, out$/);
  });
  it('hides the first reading while a second one is taken', () => {
    const scribe = scribeOf();
    const slot = 'cylinder-bore/1/top-thrust';
    read(scribe, slot, '98.610 mm');
    const view = bores(scribe, { current: slot, hidden: slot });
    expect(JSON.stringify([view.rows.map((one) => one.cells), view.figure])).not.toContain('98.610');
    expect(bores(scribe).rows[0]?.cells[0]).toMatchObject({ text: '98.610 mm', readings: 1 });
  });
  it('says that two readings of one slot disagree', () => {
    const scribe = scribeOf();
    readBore(scribe, 1, ROUND);
    read(scribe, 'cylinder-bore/1/top-thrust', '98.690 mm', true);
    const [cell] = row(scribe, '1')?.cells ?? [];
    expect(cell).toMatchObject({ state: 'disagrees', readings: 2 });
    expect(finding(scribe, '1', 'cylinder-bore.diameter')?.verdict).toBe('check again');
  });
  it('is another occasion after the work came back, with the old readings beside it', () => {
    const scribe = scribeOf();
    readBore(scribe, 1, ROUND);
    scribe.write({ kind: 'work-returned', data: { feature: 'cylinder-bore', places: ['1'], why: 'bored' } });
    expect(row(scribe, '1')).toMatchObject({ occasion: 2 });
    expect(row(scribe, '1')?.cells.every((cell) => cell.state === 'empty')).toBe(true);
    expect(row(scribe, '1')?.before).toHaveLength(6);
  });
  it('forgets what was struck out', () => {
    const scribe = scribeOf();
    const entry = read(scribe, 'cylinder-bore/1/top-thrust', '98.610 mm');
    scribe.write({ kind: 'struck-out', data: { entry, reason: 'misread' } });
    expect(bores(scribe).progress.done).toBe(0);
  });
  it('is not there for what the engine does not have', () => {
    expect(worksheetView(scribeOf().bench, 'liner-protrusion', shown)).toBeUndefined();
  });
});

describe('measuring as a whole', () => {
  const keep = (scribe: Scribe, unit: string, resolution: string) => {
    const wish = { id: 'g', name: 'old bore gauge', kind: 'bore-gauge', measured: 'length', unit, resolution } as const;
    const proposal = proposeInstrument(scribe.bench, wish);
    if (!proposal.ok) throw new Error(proposal.fault);
    for (const { kind, data } of proposal.value) scribe.write({ kind, data } as never);
  };
  const metres = (text: string, value: number) => ({ text, value, unit: 'm' }) as const;
  const check = (scribe: Scribe, moment: 'start' | 'end', read: number) =>
    scribe.write({
      kind: 'instrument-checked',
      data: {
        instrument: 'g',
        moment,
        standard: metres('4.0000 in', 0.1016),
        reading: metres(`${read} in`, read * 0.0254),
      },
    });

  it('asks first for what the strip-down destroys', () => {
    const { next, areas } = measureView(scribeOf().bench, shown);
    const sheet = areas.flatMap((area) => area.sheets).find((one) => one.feature === next?.feature);
    expect(sheet?.vanishes).toBe(true);
  });
  it('says how a gauge read its standard, and how far it drifted since the start', () => {
    const scribe = scribeOf();
    keep(scribe, 'in', '0.0001 in');
    expect(measureView(scribe.bench, shown).instruments[0]).toMatchObject({ checked: false, places: 4 });
    check(scribe, 'start', 4.0001);
    check(scribe, 'end', 4.0004);
    const [gauge] = measureView(scribe.bench, shown).instruments;
    expect(gauge).toMatchObject({ checked: true });
    expect(gauge?.check).toMatch(/reads 0\.0004 in high/);
    // 4.0004 - 4.0001 on the same standard.
    expect(gauge?.drift).toMatch(/^drifted 0\.0003 in up/);
  });
  it('does not take yesterday’s check for today’s', () => {
    const scribe = scribeOf();
    keep(scribe, 'mm', '0.001 mm');
    check(scribe, 'start', 4);
    expect(measureView(scribe.bench, { today: '2026-01-02' }).instruments[0]).toMatchObject({ checked: false });
  });
  it('offers the gauge of the right kind on a sheet, in its own unit', () => {
    const scribe = scribeOf();
    keep(scribe, 'in', '0.0001 in');
    expect(bores(scribe)).toMatchObject({ unit: 'in', instrument: { id: 'g', places: 4 } });
    expect(worksheetView(scribe.bench, 'chamber-volume', shown)?.instrument).toBeUndefined();
  });
  it('does not wait for cross-checks: an area is done when what is decided by is read', () => {
    const { areas } = measureView(scribeOf().bench, shown);
    const block = areas.find((one) => one.area === 'block');
    const needed = block?.sheets.filter((one) => !one.optional) ?? [];
    expect(block?.sheets.length).toBeGreaterThan(needed.length);
    expect(block?.progress.of).toBe(needed.reduce((sum, one) => sum + one.progress.of, 0));
  });
  it('keeps the worst verdict of an area', () => {
    const scribe = scribeOf();
    readBore(
      scribe,
      1,
      Array.from({ length: 6 }, () => '98.800 mm'),
    );
    expect(measureView(scribe.bench, shown).areas.find((one) => one.area === 'block')?.verdict).toBe('out');
  });
});
