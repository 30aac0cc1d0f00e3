import type { Engine } from '../../engine/model.js';
import type { Known, Trait } from './model.js';

const known = (is: boolean): Known => (is ? 'yes' : 'no');

/**
 * What the engine has, as far as its sheet says. The valve gear tells cam, followers and adjustment; without it these are unknown, not
 * absent. Wet liners are taken as the sheet flags them. Where the sheet does not name the fuel, it is read from the words of name and
 * description, and is unknown where they name none or both.
 */
export function traitsOf(engine: Engine): ReadonlyMap<Trait, Known> {
  return new Map([...gearTraits(engine), ...fuelTraits(engine), ...layoutTraits(engine)]);
}

function gearTraits({ valveGear: gear }: Engine): readonly (readonly [Trait, Known])[] {
  const says = (is: (has: NonNullable<typeof gear>) => boolean): Known =>
    gear === undefined ? 'unknown' : known(is(gear));
  return [
    ['pushrod', says(({ kind }) => kind === 'pushrod')],
    ['overhead-cam', says(({ kind }) => kind !== 'pushrod')],
    ['rockers', says(({ kind }) => kind === 'pushrod' || kind === 'overhead-rocker')],
    ['flat-followers', says(({ follower }) => follower === 'flat')],
    ['roller-followers', says(({ follower }) => follower === 'roller')],
    ['hydraulic', says(({ adjustment }) => adjustment === 'hydraulic')],
    ['mechanical', says(({ adjustment }) => adjustment === 'mechanical')],
    ['shims', says(({ adjuster }) => adjuster.place.startsWith('shim'))],
  ];
}

function layoutTraits(engine: Engine): readonly (readonly [Trait, Known])[] {
  return [
    ['wet-liners', known(engine.crankTrain.wetLiners === true)],
    ['several-banks', known(engine.layout.banks.length > 1)],
  ];
}

/** A gas engine is lit by a spark: what is done on a petrol engine is done on it. */
function fuelTraits({ fuel, name, description }: Engine): readonly (readonly [Trait, Known])[] {
  if (fuel !== undefined) {
    return [
      ['petrol', known(fuel !== 'diesel')],
      ['diesel', known(fuel === 'diesel')],
    ];
  }
  const words = `${name} ${description}`;
  const petrol = /\b(petrol|gasoline)\b/i.test(words);
  const diesel = /\bdiesel\b/i.test(words);
  if (petrol === diesel) {
    return [
      ['petrol', 'unknown'],
      ['diesel', 'unknown'],
    ];
  }
  return [
    ['petrol', known(petrol)],
    ['diesel', known(diesel)],
  ];
}

const NAMES: Readonly<Record<Trait, string>> = {
  pushrod: 'whether pushrods work the valves',
  'overhead-cam': 'whether the camshaft lies overhead',
  rockers: 'whether it has rockers',
  'flat-followers': 'whether its followers are flat',
  'roller-followers': 'whether its followers are rollers',
  hydraulic: 'whether its valve gear is hydraulic',
  mechanical: 'whether its valves have lash',
  shims: 'whether shims set its valves',
  'wet-liners': 'whether its liners are wet',
  petrol: 'whether it burns petrol',
  diesel: 'whether it is a diesel',
  'several-banks': 'how many banks it has',
};

/** Whether an act with these conditions belongs to the engine; `unsure` names what the sheet leaves open. */
export function applies(
  traits: ReadonlyMap<Trait, Known>,
  when: readonly Trait[] = [],
): { readonly applies: boolean; readonly unsure?: string } {
  const says = (trait: Trait) => traits.get(trait) ?? 'unknown';
  if (when.some((trait) => says(trait) === 'no')) return { applies: false };
  const open = when.filter((trait) => says(trait) === 'unknown').map((trait) => NAMES[trait]);
  if (open.length === 0) return { applies: true };
  return { applies: true, unsure: `the sheet does not say ${open.join(' or ')}` };
}
