import { describe, expect, it } from 'vitest';
import { fieldText, setField } from './fields.js';

const sheet = `# an engine of no maker
gudgeon: 1
name: Invented four
crankTrain:
  bore: { value: 86.00 mm, from: invented } # as bought
  stroke: 86.0 mm
  compressionRatio: 9.10
`;

// Comments and places of the rest: YAML 1.2.2, section 6.6 (a comment is part of the text, not of the data).
describe('a field of a sheet', () => {
  it('reads as written, with its trailing zeros', () => {
    expect(fieldText(sheet, ['crankTrain', 'bore'])).toBe('86.00 mm');
    expect(fieldText(sheet, ['crankTrain', 'compressionRatio'])).toBe('9.10');
    expect(fieldText(sheet, ['crankTrain', 'rodLength'])).toBe('');
  });

  it('changes in its own line and leaves comments alone', () => {
    const changed = setField(sheet, ['crankTrain', 'stroke'], '88.0 mm', 'measured') ?? '';
    expect(fieldText(changed, ['crankTrain', 'stroke'])).toBe('88.0 mm');
    expect(changed).toContain('# an engine of no maker');
    expect(changed).toContain('86.00 mm');
    expect(changed).toContain('from: measured');
  });

  it('does not keep the origin of the old figure', () => {
    const changed = setField(sheet, ['crankTrain', 'bore'], '86.50 mm', 'measured') ?? '';
    expect(changed).toMatch(/86\.50 mm.*from: measured/);
    expect(changed).not.toContain('from: invented');
  });

  it('takes a field out when it is emptied: unknown is not zero', () => {
    expect(setField(sheet, ['crankTrain', 'stroke'], '')).not.toContain('stroke');
  });

  it('leaves an unreadable text alone', () => {
    expect(setField('a: [', ['name'], 'x')).toBeUndefined();
    expect(fieldText('- 1', ['name'])).toBe('');
  });
});
