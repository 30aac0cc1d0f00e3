import { useState } from 'react';
import { ClearStep } from './clear-step.js';
import { Cranking } from './cranking.js';
import { Dry } from './dry.js';
import { Lines } from './lines.js';
import { PressureSeen } from './pressure-seen.js';
import type { GoProps } from './start-props.js';
import { StoppedWhy } from './stopped-why.js';
import { TryResult } from './try-result.js';

/** The start itself. Lines come first; between fuel and cranking there is nothing more to read. */
export function GoPart(props: GoProps) {
  const { go, view } = props;
  const [anew, setAnew] = useState(false);
  switch (go.run.phase) {
    case 'clear':
      return <ClearStep {...props} />;
    case 'cranking':
      return <Cranking {...props} />;
    case 'dry':
      return <Dry {...props} />;
    case 'pressure':
      return <PressureSeen {...props} written={() => setAnew(false)} />;
    case 'stopped':
      return <StoppedWhy {...props} written={() => setAnew(false)} />;
    case 'lines':
      return view.tries.length > 0 && !anew ? (
        <TryResult {...props} again={() => setAnew(true)} />
      ) : (
        <Lines {...props} />
      );
  }
}
