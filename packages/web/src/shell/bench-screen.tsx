import type { Caution } from '@gudgeon/core/workbench';
import { type ReactNode, useState } from 'react';
import { BeforeYouBegin, CautionsAgain, useAwake } from '../bench/index.js';
import { usePerson } from '../log/index.js';
import { AskPerson } from './ask-person.js';
import { Title } from './title.js';

interface BenchScreenProps {
  readonly title: string;
  readonly cautions: readonly Caution[];
  /** True once something of this work has been recorded: its cautions have been read then. */
  readonly begun: boolean;
  readonly children: ReactNode;
}

/** The frame of a bench view: a person, the hazards before the first step, then one thing at a time. */
export function BenchScreen({ title, cautions, begun, children }: BenchScreenProps) {
  const person = usePerson();
  const dark = useAwake();
  const [read, setRead] = useState(begun || cautions.length === 0);
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
        <BeforeYouBegin cautions={cautions} begin={() => setRead(true)} />
      )}
    </div>
  );
}
