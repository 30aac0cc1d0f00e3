import type { Compliance, Force } from '../../../quantity/index.js';
import { answer, type Caution, defineCalculation } from '../../catalogue/index.js';
import { embeddingAmount, roughnesses } from '../embedding.js';
import { embeddingLoss as find } from '../turn.js';
import { preload } from './inputs.js';
import { boltCompliance, force, partCompliance } from './joint-inputs.js';

const nothing: Caution = { code: 'no-preload', text: 'bedding in takes the whole preload' };

export const embeddingLoss = defineCalculation({
  id: 'fasteners.embedding-loss',
  subject: 'fasteners',
  title: 'Preload lost when a joint beds in',
  summary: 'Loss of preload from the roughness of the faces and what bolt and parts give.',
  inputs: {
    boltCompliance,
    partCompliance,
    roughness: { kind: 'choice', symbol: 'Rz', meaning: 'roughness of the faces', choices: roughnesses },
    load: {
      kind: 'choice',
      symbol: 'load',
      meaning: 'direction of the working load: along the bolt, or across it',
      choices: ['tension', 'shear'],
      default: 'tension',
    },
    faces: {
      kind: 'count',
      symbol: 'n1',
      meaning: 'bearing faces of head and nut: 1 screwed into a part, 2 with a nut',
      range: { from: 0, to: 10 },
      default: 1,
    },
    interfaces: {
      kind: 'count',
      symbol: 'n2',
      meaning: 'inner interfaces between clamped parts',
      range: { from: 0, to: 50 },
      default: 1,
    },
    preload: { ...preload, symbol: 'F0', meaning: 'preload after tightening', optional: true },
  },
  outputs: {
    amount: { kind: 'length', symbol: 'fZ', meaning: 'bedding in', unit: 'µm', places: 1 },
    loss: { ...force, symbol: 'FZ', meaning: 'preload lost' },
    left: { ...force, symbol: 'F', meaning: 'preload left', optional: true },
  },
  formula: 'fZ = thread + n1·face + n2·inner; FZ = fZ/(δS + δP)',
  assumptions: ['Independent of the preload; short bolts lose most. A gasket’s creep is not in it and is much larger.'],
  sources: ['vdi-2230'],
  example: {
    inputs: { boltCompliance: '7.218 µm/kN', partCompliance: '2.710 µm/kN', roughness: 'Rz 10 to 40 µm' },
    outputs: { amount: '8.0 µm', loss: '0.806 kN' },
    from: 'reference row O-30',
  },
  compute: (v) => {
    const amount = embeddingAmount(v.load, v.roughness, v.faces, v.interfaces);
    const loss = find(amount, (v.boltCompliance + v.partCompliance) as Compliance);
    const left = v.preload === undefined ? undefined : ((v.preload - loss) as Force);
    return answer({ amount, loss, left }, left !== undefined && left <= 0 ? [nothing] : []);
  },
});
