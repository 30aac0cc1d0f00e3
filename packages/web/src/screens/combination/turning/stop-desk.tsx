import { angleKeyed, type DegreeingView, proposeStop } from '@gudgeon/core/workbench';
import type { CombinationDesk } from '../use-combination.js';
import { SeveralEntry } from './several-entry.js';

interface StopDeskProps {
  readonly desk: CombinationDesk;
  readonly view: DegreeingView;
  readonly onWheel: (wheel: number | undefined) => void;
  readonly done: () => void;
  /** Absent while the top was never found. */
  readonly leave?: () => void;
}

/** True top dead centre by a fixed stop: the wheel on one side of it, then on the other. */
export function StopDesk({ desk, view, onWheel, done, leave }: StopDeskProps) {
  const { cylinder } = view.stop;
  const side = (name: string, words: string) => ({
    name,
    slot: `Wheel at the stop, ${words}, cylinder ${cylinder}`,
    unit: 'deg',
    ghost: 'before the mark negative, or counting 0 to 360',
    sign: true,
  });
  return (
    <section className="stack" aria-label="True top dead centre">
      <p>
        <strong>First the true top of cylinder {cylinder}.</strong> Screw the stop in so that the piston meets it below
        its top. Turn gently until it touches, key the wheel; turn back the other way round until it touches again, key
        the wheel.
      </p>
      <SeveralEntry
        about={`stop ${cylinder}`}
        asked={[side('first side', 'one side'), side('second side', 'other side')]}
        onKeyed={(keyed) => {
          const last = keyed.at(-1);
          onWheel(last && angleKeyed(`${last.shown} deg`));
        }}
        record={([first, second]) => {
          if (!first || !second) return false;
          const wish = { cylinder, first: `${first.shown} deg`, second: `${second.shown} deg` };
          const taken = desk.recorder.take(
            proposeStop(desk.bench, wish),
            `Stop at ${first.shown} and ${second.shown} degrees`,
            `${first.raw} ${second.raw}`,
          );
          if (taken) done();
          return taken;
        }}
      />
      {leave && (
        <button type="button" className="button" onClick={leave}>
          Keep the top as it was found
        </button>
      )}
    </section>
  );
}
