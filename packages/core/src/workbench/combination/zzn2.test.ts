import { it } from 'vitest';
import { engineOf, read } from '../../engine/load/try-sheets.suite.js';
import { camWindowOf, makeupOf, motionOf, preloadOf, pushrodOf, rockersOf, roomSweep, timingOf, valveRoomOf } from '../../assess/index.js';
const time = (n: string, f: () => unknown) => { const ts: number[] = []; for (let i = 0; i < 15; i++) { const a = performance.now(); f(); ts.push(performance.now() - a); } console.log('#', n, ts.slice(10).map((t) => t.toFixed(2)).join(' ')); };
it('times', () => {
  for (const name of ['quernside-51-v8', 'pellgarth-t4-twin-cam', 'tollbarrow-6w-diesel-six']) {
    const e = engineOf(read(`sheets/${name}.yaml`));
    console.log('#####', name);
    let m = makeupOf(e);
    time('makeup', () => { m = makeupOf(e, undefined, [], new Map([['cam-advance', Math.random() * 0.01]])); });
    time('room', () => valveRoomOf(m)); 
    time('sweep', () => roomSweep(m)(0.01));
    time('window', () => camWindowOf(m));
    time('motion', () => motionOf(m));
    time('rockers', () => rockersOf(m)); time('pushrod', () => pushrodOf(m)); time('preload', () => preloadOf(m)); time('timing', () => timingOf(m));
    for (const [n, a] of [['room', valveRoomOf(m)], ['window', camWindowOf(m)], ['motion', motionOf(m)], ['rockers', rockersOf(m)], ['pushrod', pushrodOf(m)], ['preload', preloadOf(m)], ['timing', timingOf(m)]] as const)
      console.log(n, a.figures.map((f) => `${f.key}@${f.kind ?? ''} ${f.value.toPrecision(4)} ${f.u?.toPrecision(2)} ${f.verdict ?? ''}`), 'MISSING', a.missing.map((x) => x.key), 'CAUT', a.cautions);
  }
});
