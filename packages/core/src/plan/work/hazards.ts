/** Hazards of the job, told before the operation that meets them. Common practice, no source; local rules come first. */
import type { WorkCaution } from './model.js';

const say =
  (word: WorkCaution['word']) =>
  (can: string, because: string, act: string): WorkCaution => ({ word, can, because, act });
const warning = say('WARNING');
const caution = say('CAUTION');
const notice = say('NOTICE');

export const HAZARDS = {
  lifting: warning(
    'A load that falls or a stand that tips crushes hands and feet.',
    'A cast part is heavy, and the balance moves as parts come off and go on.',
    'Two people or a hoist, rated chain; stand locked; nobody under it, fingers out of the gap.',
  ),
  springs: warning(
    'A spring or a lock that escapes can blind.',
    'A valve spring holds a man’s weight in a thumb’s length.',
    'Face shield on, compressor or tester square, never over its axis.',
  ),
  fire: warning(
    'Fuel can flash.',
    'Vapour runs along the floor to any spark.',
    'Battery off, fuel out and away, extinguisher within reach.',
  ),
  start: warning(
    'First start: fire, a burst hose, a hand in the fan.',
    'Nothing on this engine has run yet.',
    'One holds the extinguisher; loose clothes off; one word stops all.',
  ),
  exhaustGas: warning(
    'Exhaust gas kills without a smell.',
    'Carbon monoxide gathers in a closed room.',
    'Run outdoors or with a duct, doors open.',
  ),
  turning: warning(
    'A turning crank catches fingers, and a starter can turn it without you.',
    'Barring moves every piston, valve and belt at once.',
    'Battery off, plugs out, bar by hand, hands clear of pulleys; one person turns, and says so.',
  ),
  air: warning(
    'Air under pressure turns the crank and drives dirt into skin.',
    'A piston off dead centre is pushed down.',
    'Bar off the crank, eye protection, jet away from skin.',
  ),
  caustic: warning(
    'Hot caustic blinds and burns.',
    'It eats skin, and aluminium too.',
    'Face shield, gloves, air; never mix cleaners.',
  ),
  heat: warning(
    'A heated rod burns through a glove.',
    'It is hotter than it looks.',
    'Tongs and dry leather; a stop set before it is heated.',
  ),
  edges: caution(
    'Machined edges and ring ends cut.',
    'They are sharp until they are broken.',
    'Gloves on, or deburr first; hands along faces, never across edges.',
  ),
  hot: caution('Coolant, oil and pipes scald.', 'They stay hot long after the stop.', 'Cap stays on; wait.'),
  dust: caution(
    'Grinding dust harms lungs and bearings.',
    'It hangs in the air and settles.',
    'Mask on, parts covered.',
  ),
  dirt: notice(
    'Dirt kills a bearing in its first hours.',
    'Grit beds in the soft shell and cuts the journal.',
    'Clean hands, covers on, lint-free cloth.',
  ),
  dryStart: notice(
    'A dry start wipes shells and lobes.',
    'Oil needs time to arrive.',
    'Prime until oil is seen; stop where no pressure shows.',
  ),
  twice: notice(
    'A fastener turned twice by angle is stretched out, or breaks.',
    'Past its yield it keeps the length that it was given.',
    'Mark each one before it is turned and again after. In doubt: stop, and follow the rule of the sheet.',
  ),
  liquidInHole: notice(
    'A bolt in a blind hole with liquid in it reads the right torque and clamps nothing, or cracks the casting.',
    'Liquid cannot be squeezed.',
    'Blow blind holes dry with eye protection on, and look into each one.',
  ),
  valvesMeet: notice(
    'A valve can meet a piston when cam and crank are turned apart.',
    'On many engines they share the same room.',
    'Crank off dead centre while a cam is turned alone, and only together once timed; stop where it catches; keep to the maker’s safe crank position.',
  ),
  metalGone: notice(
    'Metal that is cut stays off.',
    'No size comes back.',
    'Measure twice, with the mating part in hand; then cut a little.',
  ),
  leftInside: notice(
    'A rag, spring or tool left inside ends the engine.',
    'Nobody sees it once it is closed.',
    'Count out and count in, before every cover.',
  ),
} as const satisfies Record<string, WorkCaution>;
