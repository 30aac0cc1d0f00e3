import type { PartKind } from '@gudgeon/core/plan';
import type { Bench, PartsView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { Progress } from '../../bench/index.js';
import { FigureView } from '../../figures/index.js';
import { type OpenJob, Said, useRecord } from '../../shell/index.js';
import { FitStep } from './fit-step.js';
import { KindAndMode } from './kind-and-mode.js';
import { KindDone } from './kind-done.js';
import { RegisterList } from './register-list.js';
import { firstKind, firstPlace, keyOf, kindProgress, openingMode, type PartsMode, placesOf } from './standing.js';
import { TagStep } from './tag-step.js';

interface PlacesProps {
  readonly open: OpenJob;
  readonly bench: Bench;
  readonly view: PartsView;
}

/** One kind of part, its tray, and one place at a time. */
export function Places({ open, bench, view }: PlacesProps) {
  const recorder = useRecord(open, bench);
  const [mode, setMode] = useState<PartsMode>(() => openingMode(view));
  const [chosen, setChosen] = useState<PartKind>();
  const [touched, setTouched] = useState<string>();
  const [lubricant, setLubricant] = useState('');
  const part = chosen ?? firstKind(view, mode) ?? view.parts[0];
  if (part === undefined) return null;
  const choose = (next: PartKind | undefined) => {
    setChosen(next);
    setTouched(undefined);
  };
  const place = placesOf(view, part).find((one) => keyOf(one) === touched) ?? firstPlace(view, part, mode);
  const figure = (mode === 'fit' ? view.figures : view.tagFigures)[part];
  const on = () => {
    setTouched(undefined);
    // The kind stays while its last place is read back; the page of the finished kind leads on.
    setChosen(part);
  };
  return (
    <>
      <Progress {...kindProgress(view, part, mode)} />
      <div className="bench-two tray">
        {figure && (
          <FigureView figure={figure} onTouch={setTouched} low {...(place ? { current: keyOf(place) } : {})} />
        )}
        <div className="bench">
          {place && mode === 'tag' && (
            <TagStep key={`${part} ${keyOf(place)}`} place={place} recorder={recorder} on={on} />
          )}
          {place && mode === 'fit' && (
            <FitStep
              key={`${part} ${keyOf(place)} ${place.state}`}
              place={place}
              others={placesOf(view, part)}
              recorder={recorder}
              lubricant={lubricant}
              setLubricant={setLubricant}
              on={on}
            />
          )}
          {!place && (
            <KindDone
              view={view}
              part={part}
              mode={mode}
              job={open.job}
              next={choose}
              fit={() => {
                setMode('fit');
                choose(undefined);
              }}
            />
          )}
          <Said recorder={recorder} />
        </div>
      </div>
      <KindAndMode
        view={view}
        part={part}
        mode={mode}
        choosePart={choose}
        chooseMode={(next) => {
          setMode(next);
          choose(part);
        }}
      />
      <RegisterList view={view} part={part} look={setTouched} />
    </>
  );
}
