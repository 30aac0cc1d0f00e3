/** Intake faces of a vee after heads, decks and gaskets have changed. */
import { intakeFace } from '../../calc/cylinder/index.js';
import type { BankId, Engine } from '../../engine/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import { answered, type Naming, type Part, together } from './answering.js';
import { computed, type Look, type Values } from './look.js';
import type { Answered, Makeup } from './model.js';

const NUMBERS: readonly Naming[] = [
  { key: 'head-moved', name: 'head closer to the crank', quantity: 'length' },
  { key: 'intake-face-cut', name: 'to take off the intake face', quantity: 'length' },
  { key: 'manifold-drop', name: 'manifold comes down by', quantity: 'length' },
];

/** Half of the angle between the two banks of a vee [rad]; undefined for any other engine. */
export function bankFromVertical({ layout }: Engine): Angle | undefined {
  const [one, other] = layout.banks;
  if (layout.form !== 'vee' || layout.banks.length !== 2 || one === undefined || other === undefined) return undefined;
  return (Math.abs(one.angle - other.angle) / 2) as Angle;
}

/** Cut of the intake face and drop of the manifold for each bank, from the cuts and gaskets that are planned. Nothing for an engine that is no vee. */
export function intakeFacesOf(makeup: Makeup): Answered {
  const angle = bankFromVertical(makeup.engine);
  const banks = angle === undefined ? [] : makeup.engine.layout.banks.map(({ id }) => bankPart(makeup, id, angle));
  return together([...banks, alike(banks)], ['cylinder.intake-face']);
}

function bankPart(makeup: Makeup, bank: BankId, bankAngle: Angle): Part {
  const first = makeup.engine.layout.cylinders.find((one) => one.bank === bank)?.number;
  const found = computed(makeup, first, (look) => faces(look, bankAngle));
  const figures = NUMBERS.flatMap((naming) => {
    const known = found.values.get(naming.key);
    return known === undefined ? [] : [answered(makeup, naming, known, { bank })];
  });
  return { figures, computed: [found] };
}

function faces(look: Look, bankAngle: Angle): Values {
  const thickness = look.read('gasket-thickness');
  const before = look.read('gasket-thickness-before') ?? thickness;
  const thicker = thickness === undefined || before === undefined ? 0 : thickness - before;
  const moved = (look.planned('head-cut') + look.planned('deck-cut') - thicker) as Length;
  const faceAngle = look.need('intake-face-angle', 'intake face cut') as Angle | undefined;
  if (faceAngle === undefined) return { 'head-moved': moved };
  const found = intakeFace(moved, bankAngle, faceAngle, look.planned('intake-gasket-change') as Length);
  return { 'head-moved': moved, 'intake-face-cut': found.faceCut, 'manifold-drop': found.drop };
}

const ALIKE = 5e-5;
/** The manifold moves straight down only where both banks came closer by the same. */
function alike(banks: readonly Part[]): Part {
  const moved = banks.flatMap(({ figures }) =>
    figures.filter(({ key }) => key === 'head-moved').map((one) => one.value),
  );
  const apart = moved.length < 2 ? 0 : Math.max(...moved) - Math.min(...moved);
  return {
    figures: [],
    computed: [],
    cautions: apart > ALIKE ? ['the two banks are cut unlike: the manifold no longer stands in the middle'] : [],
  };
}
