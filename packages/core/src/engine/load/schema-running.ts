import { z } from 'zod';
import { from, plain, quantity, words } from './schema-values.js';

/** Sections about the engine once it turns: fuel, run-in, and what is watched and asked while it runs. */
export const fuel = z.enum(['petrol', 'diesel', 'gas']);
export const runInStep = z.strictObject({
  text: words,
  time: quantity('How long.', '20 min').optional(),
  speed: plain('One speed, a window, or "below 3500 rpm".', '1800..2200 rpm').optional(),
  load: words.meta({ description: 'As the maker says it.', examples: ['half load'] }).optional(),
  from: from.optional(),
});

const ignition = z.strictObject({
  staticAdvance: quantity('Before top dead centre, standing or idling.', '8 deg').optional(),
  fullAdvance: quantity('Before top dead centre, all in.', '34 deg').optional(),
  fullAdvanceSpeed: quantity('Crank speed from which all of it is in.', '3000 rpm').optional(),
  rotor: z
    .enum(['clockwise', 'anticlockwise'])
    .meta({ description: 'Running sense of the rotor, seen from above the cap.' })
    .optional(),
  postOfFirst: quantity(
    'Post of cylinder one, clockwise from the front of the engine, seen from above.',
    '45 deg',
  ).optional(),
  from: from.optional(),
});
const oilPressure = z.strictObject({
  pressure: quantity('Window; either end may be open.', '1.8..4.0 bar'),
  speed: quantity('Speed at which it holds.', '2000 rpm').optional(),
  temperature: quantity('Oil temperature at which it holds.', '90 degC').optional(),
});
const compression = z.strictObject({
  share: quantity('Least share of the highest cylinder.', '75 %').optional(),
  floor: quantity('Least pressure of any cylinder.', '6.9 bar').optional(),
  difference: quantity('Largest difference from the highest.', '1 bar').optional(),
  printed: quantity('What the maker prints for a sound engine.', '11..13 bar').optional(),
  crankingSpeed: quantity('Speed at which it is read.', '250 rpm').optional(),
  from: from.optional(),
});
const headAgain = z.strictObject({
  when: z.enum(['never', 'cold-after-first-heat', 'hot-after-first-heat', 'at-first-service']),
  text: words.optional(),
  from: from.optional(),
});
const service = z.strictObject({
  what: z.string().min(1).max(120),
  hours: quantity('Running time.', '50 h').optional(),
  months: z.int().min(1).max(600).optional(),
  distance: words.meta({ description: 'Shown as printed.', examples: ['1000 km'] }).optional(),
  from: from.optional(),
});

export const running = z.strictObject({
  ignition: ignition.optional(),
  oilPressure: z.array(oilPressure).max(20).optional(),
  idleSpeed: quantity('Window.', '650..750 rpm').optional(),
  fullLoadSpeed: quantity('Under full load.', '2850 rpm').optional(),
  exhaustMost: quantity('Highest exhaust temperature.', '550 degC').optional(),
  oilTemperatureMost: quantity('Highest oil temperature.', '120 degC').optional(),
  coolantMost: quantity('Highest coolant temperature.', '98 degC').optional(),
  stopWithoutPressure: quantity('Longest time without oil pressure after the start.', '8 s').optional(),
  compression: compression.optional(),
  leakageMost: quantity('Largest share that a cylinder may leak.', '20 %').optional(),
  headAgain: headAgain
    .meta({ description: 'Whether the head bolts are turned again, as the maker of the gasket says.' })
    .optional(),
  service: z.array(service).max(60).optional(),
});
