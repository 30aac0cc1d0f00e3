import { z } from 'zod';
import { MOST_HOLES, MOST_ROWS, MOST_STAGES } from './bounds.js';
import { bareMark, from, id, length, note, place, plain, quantity, selection, words } from './schema-values.js';
import { SHAPE_RULES } from './shape-rules.js';

/** Sections that describe the work: joints, inspection limits, fluids. */
const treatment = z.enum([
  'oil',
  'sealer',
  'locker',
  'dry',
  'assembly-lube',
  'anti-seize',
  'as-supplied',
  'not-stated',
]);
const fastener = z.strictObject({
  id,
  name: words,
  thread: z
    .string()
    .min(1)
    .max(60)
    .meta({ description: 'As printed on the drawing or the box.', examples: ['M11x1.5'] }),
  length: length('Under the head.', '118 mm').optional(),
  strengthClass: z.string().min(1).max(30).optional(),
  use: z.enum(['once', 'reuse', 'reuse-to-length', 'not-stated']).optional(),
  lengthLimit: length('Longest length for another use.', '119.5 mm').optional(),
});
const hole = z.strictObject({
  id: id.optional(),
  ids: selection.meta({ description: 'Several holes that differ in nothing but their place.' }).optional(),
  fastener: id,
  x: place.x.optional(),
  y: place.y.optional(),
  opensInto: z.enum(['blind', 'water', 'oil', 'air', 'not-stated']).optional(),
  depth: length('How deep the hole takes a fastener, from the face in which it begins.', '62 mm').optional(),
  clamped: length('What the fastener passes through before that face: head, gasket, washer.', '84 mm').optional(),
  onThread: treatment.optional(),
  underHead: treatment.optional(),
});
/** A stage entry asks for exactly one act. */
export const ACTS = ['torque', 'angle', 'loosen', 'verify', 'stretch', 'renew', 'instruct', 'feel'] as const;
const stage = z.strictObject({
  holes: selection.optional(),
  order: z.enum(['in-order', 'reverse', 'as-listed']).optional(),
  label: z
    .union([z.string().min(1).max(20), z.int().transform(String)])
    .meta({ description: "The manual's own number where several entries make one printed stage." })
    .optional(),
  torque: plain('Tighten to.', '95 N·m').optional(),
  angle: plain('Turn on by.', '90 deg').optional(),
  loosen: plain('"fully", or the turns to slacken by.', 'fully').optional(),
  verify: plain('Check, without turning on, that the fastener holds.', '27 N·m').optional(),
  stretch: plain('Accept within.', '0.0135..0.0185 in').optional(),
  renew: words.meta({ description: 'The fastener is changed for a new one here.' }).optional(),
  instruct: words.meta({ description: 'Something else to do at this point.' }).optional(),
  feel: words
    .meta({
      description: 'Turned by hand here; the answer is how it turned.',
      examples: ['turn the crank: as free as before this cap'],
    })
    .optional(),
  each: z
    .literal('cap')
    .meta({
      description:
        'Entries with this that follow one another are all done on one cap of "caps" before the next cap begins, in the order of the joint.',
    })
    .optional(),
  note: note.optional(),
  from: from.optional(),
});
export const joint = z.strictObject({
  id,
  name: words.optional(),
  head: id.optional(),
  heads: z
    .array(id)
    .min(1)
    .max(8)
    .meta({ description: 'One joint is made for each head, with ids such as "head-left".' })
    .optional(),
  fasteners: z.array(fastener).min(1).max(40),
  holes: z.array(hole).min(1).max(MOST_HOLES),
  clamped: length('For every hole that does not say its own.', '84 mm').optional(),
  caps: z
    .record(id, selection)
    .meta({
      description: 'Holes of each bearing cap by its mark, where some stages go cap by cap.',
      examples: [{ 1: '1, 2', 2: '3, 4' }],
    })
    .optional(),
  order: z
    .union([selection, z.strictObject({ holes: selection, from: from.optional() })])
    .meta({ description: 'Visiting order of a whole pass. Leave it out where the manual prints none.' })
    .optional(),
  stages: z.array(stage).max(MOST_STAGES),
  whenInDoubt: words.optional(),
  wrench: words.optional(),
  cautions: z.array(words).max(40).optional(),
  from: from.optional(),
});

export const limit = z.strictObject({
  part: words,
  what: words,
  quantity: z
    .enum([
      'length',
      'angle',
      'force',
      'torque',
      'pressure',
      'mass',
      'volume',
      'ratio',
      'stiffness',
      'temperature',
      'angular-speed',
    ])
    .meta({ description: 'Only where the unit alone does not say it.' })
    .optional(),
  whenNew: plain('Window for new parts.', '0.0018..0.0030 in').optional(),
  wear: z
    .union([
      z.string().min(1).max(200),
      z.number(),
      z.strictObject({
        absolute: plain('Outer size.', '>= 53.308 mm').optional(),
        changeFromNew: plain('Largest change from the part when new.', '0.05 mm').optional(),
        clearance: plain('Clearance of a pair.', '<= 0.0048 in').optional(),
      }),
    ])
    .meta({ description: 'Wear limit in the form in which it is printed; plain text means an absolute size.' })
    .optional(),
  scope: z
    .union([
      words,
      z.strictObject({
        cylinders: selection.optional(),
        bank: id.optional(),
        grade: z.union([words, bareMark]).optional(),
        depth: length('Depth at which it is measured.', '25 mm').optional(),
      }),
    ])
    .meta({ description: 'Where the manual treats a cylinder, bank, grade or depth apart.' })
    .optional(),
  property: z
    .string()
    .regex(
      /^[a-z0-9]+(-[a-z0-9]+)*\.[a-z0-9]+(-[a-z0-9]+)*$/,
      'a feature, a point and its size, as cylinder-bore.taper',
    )
    .max(80)
    .meta({
      description: 'The size that this row limits, where `part` and `what` do not say it.',
      examples: ['cylinder-bore.taper'],
    })
    .optional(),
  rule: z
    .enum(SHAPE_RULES)
    .meta({
      description:
        'How the maker forms out-of-round, taper or cylindricity from the readings; which figure of the hole makes a clearance.',
    })
    .optional(),
  from: from.optional(),
  note: note.optional(),
});

export const fluid = z.strictObject({
  name: words,
  amount: quantity('Filling.', '5.2 L').optional(),
  grade: words.optional(),
  from: from.optional(),
});
export const rows = <T extends z.ZodType>(row: T) => z.array(row).max(MOST_ROWS);
