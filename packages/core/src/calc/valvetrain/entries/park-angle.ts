import { degrees, type Length, mm } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { pistonDrop } from '../../crank/index.js';
import { parkingAngles } from '../park.js';
import { shownLength } from './spring-inputs.js';

const size = { kind: 'length', unit: 'mm', range: { above: 0, to: mm(10_000) }, optional: true } as const;

export const parkAngle = defineCalculation({
  id: 'valvetrain.park-angle',
  subject: 'valvetrain',
  title: 'Crank position with every piston away from top dead centre',
  summary:
    'Where to leave the crank while a camshaft is turned or fitted by itself, and how low the nearest piston then stands.',
  inputs: {
    tops: {
      kind: 'angle',
      symbol: 'θ',
      meaning: 'crank angle at which each cylinder is at its top dead centre; a turn more or less is the same',
      unit: 'deg',
      range: { from: degrees(-720), to: degrees(1440) },
      list: true,
    },
    stroke: { ...size, symbol: 'S', meaning: 'stroke; with the rod the drop of the nearest piston follows' },
    rodLength: { ...size, symbol: 'l', meaning: 'connecting rod, centre to centre' },
    valveReach: { ...size, symbol: 'h', meaning: 'how far an open valve reaches below the head face, along the bore' },
    deckRoom: {
      kind: 'length',
      symbol: 'd',
      meaning: 'crown below the head face with the piston at top',
      unit: 'mm',
      range: { from: mm(-20), to: mm(100) },
      default: 0,
    },
  },
  outputs: {
    angles: {
      kind: 'angle',
      symbol: 'θ park',
      meaning: 'crank angles at which to park',
      unit: 'deg',
      places: 1,
      list: true,
    },
    away: { kind: 'angle', symbol: 'Δθ', meaning: 'from there to the nearest top dead centre', unit: 'deg', places: 1 },
    drop: { ...shownLength, symbol: 's', meaning: 'drop of the nearest piston', optional: true },
    room: {
      ...shownLength,
      symbol: 's + d − h',
      meaning: 'room between it and an open valve; negative: they meet',
      optional: true,
    },
  },
  formula: 'middle of the widest gap between the top dead centres on one turn; s by the exact slider-crank at Δθ',
  assumptions: [
    'Pistons of one stroke and one rod length without pin offset.',
    'Turning the crank back afterwards must follow the maker’s order of cam and crank.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: { tops: ['0 deg', '180 deg', '180 deg', '0 deg'], stroke: '3.480 in', rodLength: '5.700 in' },
    outputs: { angles: ['90.0 deg', '270.0 deg'], away: '90.0 deg', drop: '2.0121 in' },
    from: 'hand reasoning; drop of reference row MO-08',
  },
  compute: (v) => {
    const park = parkingAngles(v.tops);
    if ((v.stroke === undefined) !== (v.rodLength === undefined)) {
      return conflict(['stroke', 'rodLength'], 'stroke and rod are needed together');
    }
    if (v.stroke === undefined || v.rodLength === undefined)
      return answer({ ...park, drop: undefined, room: undefined });
    const crank = { crankRadius: (v.stroke / 2) as Length, rodLength: v.rodLength, pinOffset: 0 as Length };
    const drop = pistonDrop(crank, park.away);
    if (!drop.ok)
      return conflict(['stroke', 'rodLength'], 'the crank could not turn', {
        input: 'rodLength',
        above: drop.fault.needed,
      });
    const room = v.valveReach === undefined ? undefined : ((drop.value + v.deckRoom - v.valveReach) as Length);
    return answer({ ...park, drop: drop.value, room }, room !== undefined && room <= 0 ? MEETS : []);
  },
});

const MEETS = [
  {
    code: 'valve-hits-piston',
    text: 'an open valve can still meet a piston at this angle: slacken the rockers or lift the cam',
  },
];
