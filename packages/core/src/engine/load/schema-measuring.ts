import { z } from 'zod';
import { MOST_CYLINDERS, MOST_ROWS } from './bounds.js';
import { bareMark, from, id, length, plain, quantity, words } from './schema-values.js';

/** Sections that measuring and fitting read: where it is measured, what parts there are, what the machine shop is told. */
const name = z.string().min(1).max(60);
const material = z.enum(['cast-iron', 'steel', 'aluminium']);
/** Two for each of four banks. */
const MOST_CAMSHAFTS = 8;
const journals = z
  .int()
  .min(1)
  .max(2 * MOST_CYLINDERS);

export const inspection = z.strictObject({
  boreHeights: z
    .array(z.strictObject({ name, depth: length('Below the deck.', '20 mm').optional() }))
    .min(1)
    .max(9)
    .meta({ description: 'Heights at which a bore is measured, from the deck downward.' })
    .optional(),
  boreDirections: z
    .array(name)
    .min(1)
    .max(8)
    .meta({ description: 'Directions in which a bore is measured.', examples: [['thrust', 'along the crank']] })
    .optional(),
  mainJournals: journals.optional(),
  camJournals: journals.meta({ description: 'On each camshaft.' }).optional(),
  camshafts: z.int().min(1).max(MOST_CAMSHAFTS).meta({ description: 'In the whole engine.' }).optional(),
  thrustAt: journals.meta({ description: 'Main bearing with the thrust faces, counted from the front.' }).optional(),
  pistonHeight: length("Above the skirt's lower edge, where the piston is measured.", '12 mm').optional(),
  ringDepth: length('Below the deck, where a ring is gapped.', '25 mm').optional(),
  materials: z
    .strictObject({
      block: material,
      liner: material,
      head: material,
      piston: material,
      crankshaft: material,
      rod: material,
    })
    .partial()
    .optional(),
});

const part = {
  id,
  name: words,
  partNumber: name.optional(),
  count: z.int().min(0).max(9999).meta({ description: 'Pieces on hand; leave out what can be bought.' }).optional(),
  price: z
    .number()
    .min(0)
    .max(1e9)
    .meta({ description: "Of one, in the shop's own money; for comparing only." })
    .optional(),
  from: from.optional(),
};
const fromStandard = (what: string, example: string) =>
  plain(`${what}, on diameter; "standard" where there is none.`, example);
const grade = z.union([name, bareMark]).meta({ description: 'Mark or colour of the grade.' });
const thickness = { ...part, thickness: plain('As fitted.', '0.50 mm') };
const list = <T extends z.ZodType>(row: T) => z.array(row).max(MOST_ROWS).optional();

const piston = z.strictObject({
  ...part,
  oversize: fromStandard('Oversize', '0.50 mm'),
  skirt: plain('Diameter where the maker measures it.', '98.56..98.58 mm').optional(),
  grade: grade.optional(),
  form: name
    .meta({ description: "Another form than the maker's own, by a word; left out: the maker's.", examples: ['flat'] })
    .optional(),
  compressionHeight: plain("Pin centre to the flat of the crown; left out: the engine's.", '39.50 mm').optional(),
  crownVolume: plain('Dish and valve pockets positive, dome negative.', '-2.5 cm3').optional(),
  pocketDeeper: plain("Valve pockets deeper than those of the maker's own piston.", '0.5 mm').optional(),
  mass: plain('Bare, without pin and rings.', '540 g').optional(),
});
const camOffset = z.strictObject({
  ...part,
  offset: plain('Crank degrees that it gives, fitted either way round.', '2 deg'),
});
const shell = z.strictObject({
  ...part,
  undersize: fromStandard('Undersize of the journal', '0.25 mm'),
  wall: plain('Wall of one half at its middle.', '1.990..1.996 mm'),
  grade: grade.optional(),
});
const ring = z.strictObject({
  ...part,
  ring: z.enum(['top', 'second', 'oil']),
  oversize: fromStandard('Oversize of the bore', '0.50 mm'),
  gap: plain('Gap as delivered, in a bore of the nominal size.', '0.20..0.35 mm').optional(),
});
const headGasket = z.strictObject({
  ...thickness,
  thickness: plain('Compressed.', '1.15 mm'),
  protrusion: plain('Piston protrusion for which it is made.', '0.30..0.40 mm').optional(),
  bore: plain('Diameter of its bore opening.', '101 mm').optional(),
});
const chart = z.strictObject({
  for: z.enum(['main', 'rod']),
  rows: z
    .array(z.strictObject({ housing: grade, journal: grade, shell: grade }))
    .min(1)
    .max(MOST_ROWS)
    .meta({ description: 'Which shell goes with the marks on housing and journal.' }),
  from: from.optional(),
});

export const stock = z.strictObject({
  pistons: list(piston),
  mainShells: list(shell),
  rodShells: list(shell),
  thrustWashers: list(z.strictObject(thickness)),
  headGaskets: list(headGasket),
  springShims: list(z.strictObject(thickness)),
  linerShims: list(z.strictObject(thickness)),
  rings: list(ring),
  camOffsets: list(camOffset),
  gradeCharts: list(chart),
});

export const machining = z.strictObject({
  boreCleanUp: length('Cut that a bore needs to clean up, on diameter.', '0.15 mm').optional(),
  honeAllowance: length('Left for honing, on diameter.', '0.07 mm').optional(),
  journalCleanUp: length('Grind that a journal needs to clean up, on diameter.', '0.05 mm').optional(),
  boreFinish: words.optional(),
  journalFinish: words.optional(),
  deckFinish: words.optional(),
  torquePlate: words.meta({ description: 'Plate, gasket and bolts that are on while a bore is honed.' }).optional(),
  leastDeckHeight: length('Crank centre to deck, the least that may be left.', '231 mm').optional(),
  leastHeadThickness: length('The least that may be left.', '99 mm').optional(),
  leastBoreWall: length('The least that may be left.', '3 mm').optional(),
  ringGapFactor: z
    .strictObject({
      top: quantity('Ring gap for each unit of bore.', '0.0040').optional(),
      second: quantity('Ring gap for each unit of bore.', '0.0045').optional(),
    })
    .optional(),
  widestShellMix: length(
    'Largest difference between the two halves of one bearing; 0 mm: never mix.',
    '0.013 mm',
  ).optional(),
  massMatch: quantity('Parts of one kind weigh the same within this.', '2 g').optional(),
});
