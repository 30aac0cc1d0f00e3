import { describe, expect, it } from 'vitest';
import { heardNumber } from './heard-number.js';

// Numbers in noise are easily misheard, fifteen for fifty (bench ergonomics section 8, recalled): only digits one by one count.
describe('a figure that is spoken', () => {
  it.each([
    ['zero point zero two five', '0.025'],
    ['nought point one', '0.1'],
    ['0.025', '0.025'],
    ['0,025', '0.025'],
    ['98.6 one one', '98.611'],
    ['minus zero point zero one', '-0.01'],
    ['  Four   Seven ', '47'],
    ['.5', '.5'],
  ])('hears %j as %s', (heard, figure) => expect(heardNumber(heard)).toBe(figure));

  it.each(['fifteen', 'about two', 'one point two point three', 'two minus one', '', 'point', '5.'])(
    'takes no figure from %j',
    (heard) => expect(heardNumber(heard)).toBeUndefined(),
  );
});
