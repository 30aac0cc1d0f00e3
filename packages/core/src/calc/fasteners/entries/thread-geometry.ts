import { answer, defineCalculation } from '../../catalogue/index.js';
import { rootAreas, stressArea, threadSizes } from '../thread.js';
import { thread } from './inputs.js';

const size = { kind: 'length', unit: 'mm', places: 3 } as const;
const area = { kind: 'area', unit: 'mm2', places: 3 } as const;

export const threadGeometry = defineCalculation({
  id: 'fasteners.thread-geometry',
  subject: 'fasteners',
  title: 'Basic sizes and areas of a thread',
  summary: 'Pitch, minor and root diameter, tensile stress area and both root areas in print, metric and unified.',
  inputs: { thread },
  outputs: {
    diameter: { ...size, symbol: 'd', meaning: 'nominal diameter' },
    pitch: { ...size, symbol: 'P', meaning: 'pitch' },
    height: { ...size, symbol: 'H', meaning: 'height of the sharp triangle', places: 6 },
    pitchDiameter: { ...size, symbol: 'd2', meaning: 'basic pitch diameter' },
    minorDiameter: { ...size, symbol: 'D1', meaning: 'basic minor diameter, of the nut thread' },
    rootDiameter: { ...size, symbol: 'd3', meaning: 'root of the bolt thread (metric rounding)', optional: true },
    stressArea: { ...area, symbol: 'As', meaning: 'tensile stress area: for proof load and preload' },
    rootArea: { ...area, symbol: 'A3', meaning: 'area on d3: for the stretch of the threaded part', optional: true },
    flatRootArea: {
      ...area,
      symbol: 'A1',
      meaning: 'area on d − 1.299038·P, as older and pressure-joint tables print it',
    },
  },
  formula:
    'H = (√3/2)·P; d2 = d − 3H/4; D1 = d − 5H/4; d3 = d − 17H/12; As = π/4·((d2 + d3)/2)², unified π/4·(d − 0.9743·P)²',
  assumptions: [
    'Basic sizes: a real bolt is smaller by its tolerance and must not be judged against them.',
    'The root d3 belongs to the metric form; for unified threads it is not given.',
  ],
  sources: ['iso-68-1', 'iso-724', 'iso-898-1', 'asme-b1-1', 'root-areas'],
  example: {
    inputs: { thread: 'M10 x 1.5' },
    outputs: {
      height: '1.299038 mm',
      pitchDiameter: '9.026 mm',
      minorDiameter: '8.376 mm',
      rootDiameter: '8.160 mm',
      stressArea: '57.990 mm2',
    },
    from: 'reference rows O-01 and O-02',
  },
  compute: ({ thread: t }) => {
    const { height, pitchDiameter, minorDiameter, rootDiameter } = threadSizes(t);
    const metric = t.form === 'metric';
    return answer({
      diameter: t.diameter,
      pitch: t.pitch,
      height,
      pitchDiameter,
      minorDiameter,
      rootDiameter: metric ? rootDiameter : undefined,
      stressArea: stressArea(t),
      rootArea: metric ? rootAreas(t).rounded : undefined,
      flatRootArea: rootAreas(t).flat,
    });
  },
});
