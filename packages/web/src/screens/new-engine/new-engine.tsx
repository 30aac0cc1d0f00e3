import { useState } from 'react';
import { usePerson } from '../../log/index.js';
import { AskPerson, Shell, Title } from '../../shell/index.js';
import { ChooseSheet } from './choose-sheet.js';
import { EditSheet } from './edit-sheet.js';

/** Puts an engine on a stand: choose a sheet to start from, change what differs, adopt it. */
export function NewEngine() {
  const person = usePerson();
  const [start, setStart] = useState<{ readonly text: string; readonly from: string }>();
  return (
    <Shell place="Put an engine on a stand">
      <div className="stack-wide">
        <Title tab="New engine">Put an engine on a stand</Title>
        {person === '' && <AskPerson />}
        {!start && <ChooseSheet choose={(text, from) => setStart({ text, from })} />}
        {start && (
          <EditSheet
            start={start.text}
            from={start.from}
            mayAdopt={person !== ''}
            chooseAgain={() => setStart(undefined)}
          />
        )}
      </div>
    </Shell>
  );
}
