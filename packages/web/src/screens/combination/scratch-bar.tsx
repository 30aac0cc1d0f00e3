import { scratchRows } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { DecideCombination } from './decide-combination.js';
import type { CombinationDesk } from './use-combination.js';

type Opened = 'nothing' | 'changes' | 'throw away' | 'decide';

/** How many figures are tried, with the way to see them, to throw them away, and to decide on them. */
export function ScratchBar({ desk }: { readonly desk: CombinationDesk }) {
  const [opened, setOpened] = useState<Opened>('nothing');
  const count = desk.scratch.size;
  if (count === 0) return null;
  const toggle = (what: Opened) => setOpened(opened === what ? 'nothing' : what);
  const done = () => {
    desk.store.throwAway();
    setOpened('nothing');
  };
  return (
    <section className="scratch-bar stack" aria-label="Scratch copy" data-scratch={count}>
      <strong>
        {count === 1 ? 'One figure is changed' : `${count} figures are changed`} on the scratch copy; nothing is
        recorded
      </strong>
      <div className="row">
        <Opener name="Show" open={opened === 'changes'} toggle={() => toggle('changes')} />
        <Opener name="Decide" open={opened === 'decide'} toggle={() => toggle('decide')} />
        <span className="scratch-away">
          <Opener name="Throw away" open={opened === 'throw away'} toggle={() => toggle('throw away')} />
        </span>
      </div>
      {opened === 'changes' && <Changes desk={desk} />}
      {opened === 'throw away' && (
        <div className="combination-apart">
          <button type="button" className="button button-main" onClick={done}>
            Yes, throw the scratch copy away
          </button>
          <button type="button" className="button" onClick={() => setOpened('nothing')}>
            Keep it
          </button>
        </div>
      )}
      {opened === 'decide' && <DecideCombination desk={desk} done={done} />}
    </section>
  );
}

function Opener({
  name,
  open,
  toggle,
}: {
  readonly name: string;
  readonly open: boolean;
  readonly toggle: () => void;
}) {
  return (
    <button type="button" className="button" aria-expanded={open} onClick={toggle}>
      {name}
    </button>
  );
}

function Changes({ desk }: { readonly desk: CombinationDesk }) {
  return (
    <ul className="plain scratch-changes">
      {scratchRows(desk.tried, desk.scratch, desk.shownIn).map(({ key, title, now, was }) => (
        <li key={key} className="scratch-change">
          <span>
            {title}: <b>{now}</b> <span className="soft">{was === '' ? 'was not known' : `was ${was}`}</span>
          </span>
          <button type="button" className="button" onClick={() => desk.store.drop(key)}>
            Take back<span className="only-read">: {title}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
