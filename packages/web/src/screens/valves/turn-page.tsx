import type { Marks } from '@gudgeon/core/drawing';
import type { CrankApproach, ValveTask } from '@gudgeon/core/workbench';
import { useEffect, useMemo, useState } from 'react';
import { ActButton, say, sayAgain } from '../../bench/index.js';
import { FigureView } from '../../figures/index.js';
import { type Action, useActions, useFromTop } from '../../keys/index.js';
import { CrankFigure, type CrankFigureName } from './crank-figure.js';
import type { Desk } from './desk.js';
import { FigureChoice } from './figure-choice.js';
import { MotionButtons } from './motion-buttons.js';
import { useMotion } from './use-motion.js';

const figures: readonly (readonly [Exclude<CrankFigureName, 'gear'>, string])[] = [
  ['damper', 'Damper'],
  ['front', 'Front'],
  ['dial', 'Cam dial'],
];
const purpose: Readonly<Record<ValveTask['phase'], string>> = {
  measure: 'gaps to measure here',
  set: 'valves to set here',
  'look-again': 'valves to look at again here',
  finished: '',
};

/** Where nothing has to be turned, the drawing shows the last quarter turn that led here. */
const quarter = Math.PI / 2;

interface TurnPageProps {
  readonly desk: Desk;
  readonly task: ValveTask;
  readonly next: ValveTask['stops'][number];
  readonly approach: CrankApproach;
  readonly arrive: () => void;
}

/** One stop: how to turn, what to see and feel, and the mechanism on its way there. */
export function TurnPage({ desk, task, next, approach, arrive }: TurnPageProps) {
  const [name, setName] = useState<(typeof figures)[number][0]>('front');
  const motion = useMotion(approach.turnDegrees > 0 ? approach.from : approach.to - quarter, approach.to);
  const marks = useMemo((): Marks => litCylinders(next), [next]);
  const resting = !motion.playing && motion.angle === approach.to;
  useFromTop(`${next.stop.crankDegrees}`);
  useEffect(() => say(approach.words), [approach.words]);
  const actions: readonly Action[] = [
    { name: 'arrived', label: 'The crank is here', keys: ['Enter', ' '], available: true, run: arrive },
    { name: 'again', label: 'Say it again', keys: ['r'], available: true, run: sayAgain },
    {
      name: 'play',
      label: 'Show the turn',
      keys: ['p'],
      available: motion.play !== undefined,
      run: () => motion.play?.(),
    },
    { name: 'back', label: '−10°', keys: ['ArrowLeft'], available: true, run: () => motion.step(-10) },
    { name: 'forward', label: '+10°', keys: ['ArrowRight'], available: true, run: () => motion.step(10) },
  ];
  const run = useActions(actions);
  return (
    <div className="turn-page" data-stop={next.stop.crankDegrees} data-phase={task.phase}>
      <section className="bench turn-head" aria-live="polite">
        <h2 className="step-lead">
          Stop {next.place + 1} of {desk.view.stops.length}, {next.left.length} {purpose[task.phase]}
        </h2>
        <p className="target-number" data-current-number>
          {approach.number}
        </p>
        <p className="step-lead">{approach.beside}</p>
        <p>{approach.words}</p>
      </section>
      <div className="stack valve-drawing">
        {name === 'damper' && resting ? (
          <FigureView figure={approach.figure} />
        ) : (
          <CrankFigure desk={desk} name={name} angle={motion.angle} marks={marks} />
        )}
        <FigureChoice names={figures} chosen={name} choose={setName} />
        <MotionButtons motion={motion} />
      </div>
      <section className="bench turn-sights">
        <h3 className="step-title">See and feel</h3>
        <ul className="sights">
          {next.stop.sight.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        {actions[0] && <ActButton action={actions[0]} run={run} />}
      </section>
    </div>
  );
}

const litCylinders = ({ left }: ValveTask['stops'][number]): Marks =>
  Object.fromEntries(left.map((one) => [String(one.valve.cylinder), 'lit' as const]));
