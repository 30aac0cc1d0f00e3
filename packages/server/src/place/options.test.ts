import { describe, expect, it } from 'vitest';
import { USUAL_PORT, wishedPort } from './options.js';

describe('the port', () => {
  it('is the usual one when nobody says otherwise', () => {
    expect(wishedPort([], {})).toEqual({ ok: true, port: USUAL_PORT });
    expect(wishedPort([], { PORT: '' })).toEqual({ ok: true, port: USUAL_PORT });
  });
  it('is taken from the command line before the environment', () => {
    expect(wishedPort(['--port', '5001'], { PORT: '6001' })).toEqual({ ok: true, port: 5001 });
    expect(wishedPort(['--port=5001'], {})).toEqual({ ok: true, port: 5001 });
    expect(wishedPort([], { PORT: '6001' })).toEqual({ ok: true, port: 6001 });
  });
  it('is refused in one line when it is no port', () => {
    for (const wrong of ['banana', '-1', '65536', '80.5', ''])
      expect(wishedPort(['--port', wrong], {})).toMatchObject({
        ok: false,
        problem: expect.stringContaining('0 to 65535'),
      });
    expect(wishedPort(['--port'], {})).toMatchObject({ ok: false });
  });
});
