import { z } from 'zod';
import { cylinderNumber, from, id, length, note, place, plain, quantity, selection, words } from './schema-values.js';

/** Sections that describe the machine: layout, crank train, cam, valve gear, heads. */
const order = z.union([z.string().min(1).max(100), z.array(cylinderNumber).min(1).max(24)]);
export const layout = z.strictObject({
  form: z.enum(['inline', 'vee', 'opposed']),
  banks: z
    .record(id, plain('Angle from straight up, positive clockwise seen from the FRONT of the engine.', '45 deg'))
    .meta({ description: 'Bank id and angle. An inline engine may leave it out: one bank "main", straight up.' })
    .optional(),
  cylinders: z
    .union([z.record(id, z.array(cylinderNumber).min(1).max(24)), z.array(cylinderNumber).min(1).max(24)])
    .meta({
      description:
        'Cylinder numbers of each bank, front to rear; for one bank simply a list. A bank listed first stands farther forward.',
    }),
  crankpins: z
    .array(
      z.strictObject({
        cylinders: z.array(cylinderNumber).min(1).max(4),
        at: plain('Direction relative to the pin of cylinder 1, in the running sense.', '90 deg').optional(),
      }),
    )
    .max(24)
    .meta({ description: 'Crankpins from the front, and which cylinders share each.' })
    .optional(),
  rotation: z
    .enum(['clockwise', 'anticlockwise'])
    .meta({ description: 'Running sense seen from the front.' })
    .optional(),
  firingOrder: z
    .union([order, z.number(), z.strictObject({ value: order, from: from.optional() })])
    .meta({ description: 'Leave out where it is not known.', examples: ['1-3-4-2'] })
    .optional(),
  firingIntervals: z
    .union([z.literal('even'), z.array(plain('Crank angle from one firing to the next.', '90 deg')).min(1).max(24)])
    .optional(),
  borePitch: length('Distance between neighbouring cylinder centres of a bank.', '111.8 mm').optional(),
  from: from.optional(),
});

export const crankTrain = z.strictObject({
  bore: length('Cylinder bore.').optional(),
  stroke: length('Stroke.', '88.4 mm').optional(),
  rodLength: length('Connecting rod, centre to centre.', '150 mm').optional(),
  pinOffset: length('Piston pin offset.', '0.5 mm').optional(),
  compressionHeight: length('Pin centre to crown.', '40 mm').optional(),
  deckHeight: length('Crank centre to deck.', '234.7 mm').optional(),
  compressionRatio: quantity('Static compression ratio.', '9.1:1').optional(),
  chamberVolume: quantity('Chamber in the head.', '64 cm3').optional(),
  displacement: quantity('Of the whole engine, as printed.', '5.74 L').optional(),
  wetLiners: z.boolean().optional(),
});

const inAndOut = (name: string, example: string) =>
  z.strictObject({ intake: quantity(`${name}, intake.`, example), exhaust: quantity(`${name}, exhaust.`, example) });
export const cam = z.strictObject({
  basis: z.enum(['seat', 'at-lift']).meta({ description: 'Seat to seat, or measured at a checking lift.' }),
  checkingLift: length('Lift at which the events were printed.', '0.050 in').optional(),
  events: z
    .strictObject({
      io: plain('Intake opens, before top dead centre.', '12 deg BTDC'),
      ic: plain('Intake closes, after bottom dead centre.', '52 deg ABDC'),
      eo: plain('Exhaust opens, before bottom dead centre.', '52 deg BBDC'),
      ec: plain('Exhaust closes, after top dead centre.', '12 deg ATDC'),
    })
    .optional(),
  advertisedDuration: inAndOut('Seat-to-seat duration in crank degrees', '270 deg').optional(),
  lobeLift: inAndOut('Lift at the lobe', '7.1 mm').partial().optional(),
  from: from.optional(),
});

const lash = z.strictObject({
  cold: quantity('Lash with the engine cold.', '0.30..0.40 mm').optional(),
  hot: quantity('Lash with the engine hot.', '0.25 mm').optional(),
});
export const valveGear = z.strictObject({
  kind: z.enum(['pushrod', 'overhead-rocker', 'overhead-finger', 'overhead-bucket']),
  follower: z.enum(['flat', 'roller']),
  adjustment: z.enum(['hydraulic', 'mechanical']),
  valvesPerCylinder: z.strictObject({ intake: z.int().min(1).max(4), exhaust: z.int().min(1).max(4) }),
  ratio: quantity('Rocker ratio.', '1.6:1').optional(),
  adjuster: z
    .strictObject({
      place: z.enum([
        'stud-nut',
        'pushrod-end-screw',
        'valve-end-screw',
        'shim-over-bucket',
        'shim-under-bucket',
        'finger-pivot',
        'none',
      ]),
      thread: z.string().min(1).max(60).optional(),
      pitch: length('Pitch of the adjuster thread.', '1.25 mm').optional(),
    })
    .optional(),
  preload: z
    .strictObject({
      turns: quantity('Turns past zero lash.', '3/4 turn').optional(),
      plungerTravel: quantity('Travel of the plunger from its rest.', '0.5..1.5 mm').optional(),
    })
    .optional(),
  lash: z.strictObject({ intake: lash, exhaust: lash }).optional(),
  shims: z
    .strictObject({
      thinnest: length('Thinnest shim made.', '2.30 mm'),
      thickest: length('Thickest shim made.', '2.90 mm'),
      step: length('From one size to the next.', '0.025 mm'),
      rounding: z.enum(['nearest', 'next-thinner', 'next-thicker']),
    })
    .optional(),
});

const opening = z.strictObject({
  id,
  kind: z.enum(['bore', 'water', 'oil', 'pushrod', 'bolt', 'dowel', 'timing-drive']),
  ...place,
  diameter: plain('Diameter of the opening.', '9 mm'),
  intent: z.enum(['open', 'metered', 'closed']).optional(),
});
export const gasket = z.strictObject({
  wayUp: words.meta({ description: 'How a person sees which way up and round it lies.' }),
  thickness: length('Compressed thickness.', '1.05 mm').optional(),
  dressing: words.meta({ description: 'What goes on its faces; dry unless the maker says otherwise.' }).optional(),
  bores: plain('Diameter of the bore openings; one is made at each cylinder centre.', '104 mm').optional(),
  bolts: plain(
    'Diameter of the bolt openings; one is made at each placed hole of the joints of this head.',
    '12 mm',
  ).optional(),
  openings: z.array(opening).max(400).optional(),
  from: from.optional(),
});
export const head = z.union([
  z.strictObject({
    id,
    name: words.optional(),
    bank: id.optional(),
    cylinders: selection.optional(),
    length: plain('Along the crank.', '480 mm'),
    width: plain('Across.', '190 mm'),
    cylinderCentres: z.record(z.string(), z.strictObject(place)),
    valves: z
      .array(
        z.strictObject({
          cylinder: cylinderNumber,
          kind: z.enum(['intake', 'exhaust']),
          ...place,
          diameter: plain('Head diameter of the valve.', '46 mm').optional(),
        }),
      )
      .max(200)
      .meta({ description: 'Valves front to rear; those of one kind in one cylinder are counted from the front.' }),
    gasket: gasket.optional(),
  }),
  z.strictObject({
    id,
    name: words.optional(),
    bank: id,
    like: id.meta({ description: 'The same casting as this head.' }),
    turned: z.boolean().meta({ description: 'Turned end for end, as on the other bank of a vee.' }).optional(),
  }),
]);

export { note };
