import { type Length, mm } from '../../../quantity/index.js';
import { answer, type Caution, conflict, defineCalculation } from '../../catalogue/index.js';
import { fitPressure, fitSizes } from '../thick-cylinder.js';
import { interference, rings, size } from './inputs.js';
import { noWall, pairOf } from './pair.js';

const length = { kind: 'length', unit: 'mm', places: 4 } as const;
const noStock: Caution = {
  code: 'nothing-to-ream',
  text: 'the pressed guide is already larger than the finished size: it will not clean up',
};

export const guideFinish = defineCalculation({
  id: 'fits.guide-after-pressing',
  subject: 'fits',
  title: 'Bore of a guide or bushing after pressing, and what to finish it to',
  summary: 'How far a pressed guide closes, the stem clearance that would leave, and the size to ream or hone to.',
  inputs: {
    ...rings,
    shaftBore: { ...size, symbol: 'Di', meaning: 'bore of the guide or bushing before pressing' },
    interference,
    stem: { ...size, symbol: 'S', meaning: 'stem or pin that runs in it' },
    clearance: {
      kind: 'length',
      symbol: 'C',
      meaning: 'clearance wanted on the diameter',
      unit: 'mm',
      range: { from: 0, to: mm(5) },
    },
  },
  outputs: {
    closure: { ...length, symbol: 'ΔDi', meaning: 'the bore closes by this' },
    pressedBore: { ...length, symbol: "Di'", meaning: 'bore after pressing' },
    pressedClearance: { ...length, symbol: "C'", meaning: 'clearance unfinished; negative: the stem does not go in' },
    finishBore: { ...length, symbol: 'B', meaning: 'finish the bore to' },
    stock: { ...length, symbol: "B − Di'", meaning: 'to be taken out, on the diameter' },
  },
  formula: "ΔDi = 2p·Di·d²/(Es·(d² − Di²)), p as in fits.press-fit; Di' = Di − ΔDi; B = S + C",
  assumptions: ['As fits.press-fit: elastic, even rings. Measure after pressing; this says what to expect.'],
  sources: ['thick-cylinders'],
  example: {
    inputs: {
      diameter: '14 mm',
      hubOutside: '30 mm',
      shaftBore: '8 mm',
      interference: '0.045 mm',
      hubModulus: '110 GPa',
      hubPoisson: '0.26',
      shaftModulus: '110 GPa',
      shaftPoisson: '0.34',
      stem: '7.965 mm',
      clearance: '0.040 mm',
    },
    outputs: { closure: '0.0222 mm', pressedBore: '7.9778 mm', finishBore: '8.005 mm', stock: '0.0272 mm' },
    from: 'reference row O-37 for the closure; the rest by hand arithmetic',
  },
  compute: (v) => {
    const wrong = noWall(v);
    if (wrong) return wrong;
    const pair = pairOf(v);
    const { boreClosure: closure } = fitSizes(pair, fitPressure(pair, v.interference));
    const pressedBore = (v.shaftBore - closure) as Length;
    if (pressedBore <= 0) return conflict(['interference', 'shaftBore'], 'the bore would close altogether');
    const finishBore = (v.stem + v.clearance) as Length;
    const stock = (finishBore - pressedBore) as Length;
    return answer(
      { closure, pressedBore, pressedClearance: (pressedBore - v.stem) as Length, finishBore, stock },
      stock < 0 ? [noStock] : [],
    );
  },
});
