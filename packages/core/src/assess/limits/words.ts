/**
 * The trade's words for parts and sizes, with their synonyms in British and American use. A text is first made plain: lower case,
 * no punctuation, `push rod` written together. Each entry is looked for anywhere in it, so that word order does not matter.
 */
const SYNONYMS = {
  crank: 'crank|crankshaft',
  cam: 'cams?|camshafts?',
  main: 'mains?',
  crankpin: 'crankpins?|crank pins?|pins|big end journals?|rod journals?',
  journal: 'journals?',
  rod: 'rods?|connecting rods?|conrods?',
  bearing: 'bearings?|shells?|inserts?|bush(es|ings?)?',
  bush: 'bush(es|ings?)?',
  wall: 'wall|shell thickness|wall thickness|bearing thickness',
  thrust: 'thrust',
  'end float': 'end (float|play|clearance|thrust|movement)|axial (float|play|clearance|movement)|thrust clearance',
  side: 'side (float|play|clearance|gap)|end play on crankpin',
  clearance: 'clearances?|play|fit (in|of|to|between)',
  bore: 'bores?|inside diameter|internal diameter|id|housings?|tunnels?',
  inside: 'inside|internal|id',
  outside: 'outside|external|od',
  diameter: 'diameters?|od|id|size',
  'out of round': 'out of round(ness)?|ovality|roundness',
  taper: 'tapers?',
  width: 'widths?',
  thickness: 'thickness',
  length: 'lengths?|centre distance|centre to centre|center to center',
  height: 'heights?',
  depth: 'depths?',
  'run-out': 'runout|run out|bend|bow|straightness|swing|tir|eccentricity',
  flat: 'flat(ness)?|warp(age)?|distortion|out of flat',
  cylinder: 'cylinders?',
  block: 'block|crankcase',
  liner: 'liners?|sleeves?',
  repair: 'repair|dry',
  flange: 'flange',
  counterbore: 'counterbores?|recess(es)? for (liner|sleeve)s?',
  protrusion: 'protrusions?|projection|stand ?proud|height above',
  spread: 'spread|differences?|variation|between',
  lower: 'lower|bottom|packing|seals?',
  upper: 'upper|top',
  'below the flange': 'below( the)? flange',
  fire: 'fire (wall|rim|ring|dam)',
  deck: 'decks?|top face|block face|gasket face',
  piston: 'pistons?',
  'piston pin': '(piston|gudgeon|wrist) pins?|pins?',
  'small end': 'small ends?|little ends?|pin ends?|pin bush(ing)?|bush(ing)?',
  'big end': 'big ends?|crankpin ends?|bearing',
  bend: 'bend|parallelism',
  twist: 'twist',
  'no bush': 'without bush(ing)?|(bore|hole) for (the )?bush(ing)?|end bore in rod',
  mass: 'mass(es)?|weights?',
  ring: 'rings?',
  gap: 'gaps?',
  groove: 'grooves?',
  tension: 'tension|pull',
  lobe: 'lobes?|lift at the cam|cam height|base to tip|cam lift',
  lift: 'lifts?',
  'over the lobe': 'base to tip|height|total height|nose to heel',
  base: 'base circle|heel',
  injector: 'injectors?|nozzles?',
  lifter: 'lifters?|tappets?|cam followers?|followers?',
  bucket: 'buckets?',
  crown: 'crown|convexity',
  pushrod: 'pushrods?',
  rocker: 'rockers?|rocker arms?',
  shaft: 'shafts?',
  valve: 'valves?',
  stem: 'stems?',
  guide: 'guides?',
  seat: 'seats?',
  face: 'faces?',
  angle: 'angles?',
  margin: 'margins?|rim thickness',
  recess: 'recess(es|ion)?|sunk|stand ?down|depth below|below (the )?(head|face|deck)',
  head: 'heads?',
  lash: 'lash|clearance|tappet clearance',
  spring: 'springs?',
  free: 'free',
  square: 'square(ness)?',
  lean: 'lean',
  load: 'loads?|pressure|force|tension',
  open: 'open|lifted|full lift',
  bind: 'coil bind|bind|solid|compressed solid',
  installed: 'installed|fitted|assembled|closed',
  chamber: 'chambers?',
  volume: 'volumes?|capacity',
  gasket: 'gaskets?',
  manifold: 'manifolds?',
  chain: 'chains?',
  slack: 'slack|deflection|sag|movement',
  gear: 'gears?|teeth|tooth',
  backlash: 'backlash|lash',
  flywheel: 'flywheel',
  stroke: 'stroke',
  fillet: 'fillets?',
  compression: 'compression height|pin height',
  dish: 'dish|dome|crown|bowl',
  'below the deck': 'below (the )?(deck|block)|down in (the )?bore',
  shim: 'shims?',
} as const;

export type Word = keyof typeof SYNONYMS;

const PATTERNS = new Map(
  Object.entries(SYNONYMS).map(([word, synonyms]) => [word, new RegExp(`\\b(?:${synonyms})\\b`)] as const),
);

/** Lower case, hyphens and marks as spaces, the few words that are written both apart and together written together. */
export function plainWords(text: string): string {
  return text
    .toLowerCase()
    .replace(/push[ -]rod/g, 'pushrod')
    .replace(/counter[ -]bore/g, 'counterbore')
    .replace(/[^a-z0-9.]+/g, ' ')
    .trim();
}

export function says(plain: string, word: Word): boolean {
  return PATTERNS.get(word)?.test(plain) ?? false;
}
