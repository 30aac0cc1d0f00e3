import type { Caution } from '@gudgeon/core/workbench';
import { type ReactNode, useState } from 'react';
import { BeforeYouBegin, CautionsAgain, useAwake } from '../bench/index.js';
import { usePerson } from '../log/index.js';
import { AskPerson } from './ask-person.js';
import { haveRead, noteRead } from './cautions-read.js';
import { Title } from './title.js';

interface BenchScreenProps {
  readonly title: string;
  readonly cautions: readonly Caution[];
  /** True once something of this work has been recorded: its cautions have been read then. */
  readonly begun: boolean;
  /** True for one of many like sheets: cautions that this person has read on another one are not held before the work again. */
  readonly once?: boolean;
  readonly children: ReactNode;
}

/** The frame of a bench view: a person, the hazards before the first step, then one thing at a time. */
export function BenchScreen({ title, cautions, begun, once = false, children }: BenchScreenProps) {
  const person = usePerson();
  const dark = useAwake();
  const [read, setRead] = useState(begun || (once && haveRead(person, cautions)) || cautions.length === 0);
  const begin = () => {
    noteRead(person, cautions);
    setRead(true);
  };
  return (
    <div className="bench">
      <Title tab={title}>{title}</Title>
      {person === '' ? (
        <AskPerson />
      ) : read ? (
        <>
          {children}
          <CautionsAgain cautions={cautions} />
          {dark && <p className="field-hint">{dark}</p>}
        </>
      ) : (
        <BeforeYouBegin cautions={cautions} begin={begin} />
      )}
    </div>
  );
}
