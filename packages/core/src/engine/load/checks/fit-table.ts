import type { InspectionLimit } from '../../model.js';
import { type Aspect, textOf } from './row-words.js';

/** Which rows of a sheet make a fit: what is left of the whole when the parts are taken off is the printed clearance. */
export interface FitRule {
  readonly name: string;
  readonly gap: Words;
  readonly whole: Words;
  readonly taken: readonly { readonly words: Words; readonly times: number }[];
  /** In what the rows must not differ, besides cylinders, bank and grade. */
  readonly aspects: readonly Aspect[];
}
/** All of `is`, none of `not`, in part and measurement together; `part` where the part alone must say it. */
export interface Words {
  readonly part?: RegExp;
  readonly is: readonly RegExp[];
  readonly not?: RegExp;
}

/** Rows about form, play of another kind or a count are never a size of a fit. */
const NEVER =
  /out[- ]of[- ]round|taper|run-?out|flatness|spread|difference|bend|twist|\btorque\b|weight|available|backlash|tension|crush|height of|per 100/;

export const fitsWords = (limit: InspectionLimit, words: Words): boolean => {
  const text = textOf(limit);
  if (limit.quantity !== 'length' || NEVER.test(text) || words.not?.test(text)) return false;
  return (words.part?.test(limit.part.toLowerCase()) ?? true) && words.is.every((each) => each.test(text));
};

const CLEARANCE = /clearance|\bfit\b|interference/;
const PIN: Words = { part: /(piston|gudgeon|wrist) pin/, is: [/diameter/], not: /clearance|\bfit\b|bore|length/ };
const CRANK_FLOAT: Words = { is: [/crank/, /end (play|float|clearance|thrust)/] };
const THRUST_WIDTH: Words = { is: [/crank/, /thrust/, /width/], not: /bearing width/ };

export const FITS: readonly FitRule[] = [
  {
    name: 'piston in its bore',
    gap: { is: [/\bpistons?\b/, CLEARANCE], not: /\bpin\b|ring|groove|valve|head|deck|\brod\b|bush/ },
    whole: {
      part: /cylinder( bore| block| liner| sleeve|$)|^(bore|block|engine block|liner|sleeve)\b/,
      is: [/bore|inside diameter|cylinder.*diameter/],
      not: /main|cam|tappet|lifter|follower|bucket|counterbore|packing|flange|outside|lower|upper|clearance|repair|block.*(sleeve|liner)|protrusion|oil|head|pin/,
    },
    taken: [
      { words: { part: /^pistons?$/, is: [/diameter|skirt/], not: /\bpin\b|groove|ring|clearance|height/ }, times: 1 },
    ],
    aspects: [],
  },
  {
    name: 'main journal in its shells',
    gap: { is: [/\bmain\b/, /clearance/], not: /end|side|thrust/ },
    whole: { is: [/\bmain\b/, /housing|bore/], not: /clearance|journal|thrust|cap screw/ },
    taken: [
      { words: { is: [/\bmain\b/, /bearing|shell/, /wall|thickness/], not: /thrust|flange|width/ }, times: 2 },
      { words: { is: [/\bmain (bearing )?journal/], not: /width|clearance|bore|fillet/ }, times: 1 },
    ],
    aspects: ['numbers'],
  },
  {
    name: 'crankpin in its shells',
    gap: { is: [/\brod\b|big[- ]end|crankpin/, /clearance/], not: /side|end (play|float)|small|\bpin\b|bush|main/ },
    whole: { is: [/\brod\b|big[- ]end/, /bore|housing/], not: /\bpin\b|bush|small|pin[- ]end|clearance|bolt/ },
    taken: [
      { words: { is: [/\brod\b|big[- ]end/, /bearing|shell/, /wall|thickness/], not: /thrust|width/ }, times: 2 },
      {
        words: { is: [/crankpin|rod journal|big[- ]end journal/], not: /width|clearance|fillet|bore|housing/ },
        times: 1,
      },
    ],
    aspects: [],
  },
  {
    name: 'camshaft in its bearings',
    gap: { is: [/\bcam(shaft)?\b/, /journal|bearing/, /clearance/], not: /end|thrust/ },
    whole: {
      is: [/\bcam(shaft)?\b/, /bearing|bush|bore/, /diameter|bore/],
      not: /journal diameter|block|clearance|outside|width|housing/,
    },
    taken: [
      {
        words: { is: [/\bcam(shaft)?\b/, /journal/], not: /bore|clearance|length|width|bearing|bush/ },
        times: 1,
      },
    ],
    aspects: ['numbers', 'end', 'valve'],
  },
  {
    name: 'follower in its bore',
    gap: { is: [/lifter|tappet|bucket|follower/, /clearance/], not: /lash|cold|hot|tip/ },
    whole: { is: [/(lifter|tappet|bucket|follower)s?('s)? ?(bore|guide)/], not: /clearance/ },
    taken: [{ words: { part: /lifter|tappet|bucket|follower/, is: [/diameter/], not: /bore|clearance/ }, times: 1 }],
    aspects: ['valve'],
  },
  {
    name: 'valve stem in its guide',
    gap: { is: [/stem/, /clearance/] },
    whole: { is: [/guide/, /inside|bore|diameter/], not: /stem|clearance|outside|height|length|protrusion/ },
    taken: [{ words: { is: [/stem/, /diameter/], not: /clearance|guide|oversize/ }, times: 1 }],
    aspects: ['valve'],
  },
  {
    name: 'pin in the piston',
    gap: { is: [/\bpin\b/, CLEARANCE, /\bpiston\b/], not: /\brod\b|bush|small|ring/ },
    whole: { is: [/\bpiston\b/, /pin (bore|hole)/], not: /\brod\b|bush|clearance/ },
    taken: [{ words: PIN, times: 1 }],
    aspects: [],
  },
  {
    name: 'pin in the connecting rod',
    gap: { is: [/\bpin\b/, CLEARANCE, /\brod\b|bush|small[- ]end/], not: /crank/ },
    whole: {
      is: [/\brod\b|small[- ]end/, /bush|\bpin\b|pin[- ]end|small[- ]end/, /bore|inside/],
      not: /without|outside|bore in rod|for bush|clearance|length/,
    },
    taken: [{ words: PIN, times: 1 }],
    aspects: [],
  },
  {
    name: 'ring in its groove',
    gap: { is: [/\bring/, /(side|groove).*clearance|clearance in (the |its )?groove/] },
    whole: { is: [/groove/, /width|height/], not: /clearance/ },
    taken: [
      { words: { part: /\brings?\b/, is: [/width|thickness|height/], not: /groove|clearance|radial/ }, times: 1 },
    ],
    aspects: ['ring'],
  },
  {
    name: 'bush in the connecting rod',
    gap: { is: [/bush/, /interference|\bfit\b/], not: /\bpin\b/ },
    whole: { is: [/\brod\b/, /bore for (the )?bush|bore without bush/] },
    taken: [{ words: { is: [/bush/, /outside/] }, times: 1 }],
    aspects: [],
  },
  {
    name: 'liner in the block',
    gap: { is: [/liner|sleeve/, CLEARANCE], not: /piston|ring gap|pin/ },
    whole: { is: [/block/, /(sleeve|liner|packing[- ]ring) bore|counterbore diameter/], not: /clearance|depth/ },
    taken: [{ words: { part: /liner|sleeve/, is: [/outside/], not: /clearance|repair/ }, times: 1 }],
    aspects: ['zone'],
  },
  {
    name: 'liner flange over the block',
    gap: { is: [/liner|sleeve/, /protrusion|projection/], not: /neighbour|fire wall/ },
    whole: { is: [/flange/, /thickness/], not: /bearing|washer/ },
    taken: [{ words: { is: [/counterbore/, /depth/] }, times: 1 }],
    aspects: [],
  },
  {
    name: 'crankshaft between its thrust faces',
    gap: CRANK_FLOAT,
    whole: THRUST_WIDTH,
    taken: [{ words: { is: [/thrust bearing/, /width/], not: /crank|block/ }, times: 1 }],
    aspects: [],
  },
  {
    name: 'crankshaft between its thrust washers',
    gap: CRANK_FLOAT,
    whole: THRUST_WIDTH,
    taken: [
      { words: { is: [/block/, /width/, /thrust/] }, times: 1 },
      { words: { is: [/thrust washer/, /thickness/] }, times: 2 },
    ],
    aspects: [],
  },
  {
    name: 'two rods on one crankpin',
    gap: { is: [/\brod/, /side clearance/, /pair/] },
    whole: { is: [/crankpin/, /width/] },
    taken: [{ words: { is: [/\brod\b/, /width/], not: /bearing|crankpin/ }, times: 2 }],
    aspects: [],
  },
];
