import type { CamCarries, ValveRoomView, ValveRoomWish } from '@gudgeon/core/workbench';
import { ChoiceField } from '../../../bench/index.js';

interface CamChoicesProps {
  readonly view: Pick<ValveRoomView, 'cylinder' | 'cylinders' | 'carries'>;
  readonly wish: ValveRoomWish;
  readonly set: (wish: ValveRoomWish) => void;
}
const CARRIES: readonly (readonly [CamCarries, string])[] = [
  ['both', 'intake and exhaust'],
  ['intake', 'intake valves only'],
  ['exhaust', 'exhaust valves only'],
];

/** Whose piston is taken, and which valves the cam carries that is moved. */
export function CamChoices({ view, wish, set }: CamChoicesProps) {
  return (
    <div className="turning-choices">
      <ChoiceField
        name="The cam that is moved carries"
        value={view.carries}
        choices={CARRIES}
        set={(carries) => set({ ...wish, carries })}
      />
      {view.cylinders.length > 1 && (
        <ChoiceField
          name="Piston of"
          value={`${view.cylinder}`}
          choices={view.cylinders.map((one) => [`${one}`, `cylinder ${one}`] as const)}
          set={(cylinder) => set({ ...wish, cylinder: Number(cylinder) })}
        />
      )}
    </div>
  );
}
