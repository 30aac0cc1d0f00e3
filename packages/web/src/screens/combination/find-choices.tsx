import {
  type FindForm,
  formUnit,
  gasketWords,
  NO_PISTON,
  type PistonForm,
  pistonsOfStock,
  pistonWords,
  stockGaskets,
} from '@gudgeon/core/workbench';
import { TextField } from '../../bench/index.js';
import { CutFields, RangeFields, Tick } from './find-fields.js';
import type { CombinationDesk } from './use-combination.js';

interface FindChoicesProps {
  readonly desk: CombinationDesk;
  readonly form: FindForm;
  readonly set: (part: Partial<FindForm>) => void;
}

/** Everything that may be bought, cut or moved; what stays closed is as it is on the scratch copy. */
export function FindChoices({ desk, form, set }: FindChoicesProps) {
  const { shownIn, open } = desk;
  const [length, volume] = [formUnit('length', shownIn), formUnit('volume', shownIn)];
  const banks = open.engine.layout.banks.length > 1;
  return (
    <section className="stack" aria-labelledby="choices">
      <h2 id="choices">What may be chosen</h2>
      <Choice name="Head gasket" on={form.gaskets.on} toggle={(on) => set({ gaskets: { ...form.gaskets, on } })}>
        <Gaskets desk={desk} form={form} set={set} />
      </Choice>
      <Choice name="Deck cut" on={form.deckCut.on} toggle={(on) => set({ deckCut: { ...form.deckCut, on } })}>
        <CutFields unit={length} form={form.deckCut} banks={banks} set={(deckCut) => set({ deckCut })} />
      </Choice>
      <Choice name="Head cut" on={form.headCut.on} toggle={(on) => set({ headCut: { ...form.headCut, on } })}>
        <CutFields unit={length} form={form.headCut} banks={banks} set={(headCut) => set({ headCut })} />
      </Choice>
      <Choice name="Piston" on={form.pistons.on} toggle={(on) => set({ pistons: { ...form.pistons, on } })}>
        <StockPistons desk={desk} form={form} set={set} />
        <Pistons
          rows={form.pistons.rows}
          length={length}
          volume={volume}
          set={(rows) => set({ pistons: { ...form.pistons, rows } })}
        />
      </Choice>
      <Choice name="Chamber volume" on={form.chambers.on} toggle={(on) => set({ chambers: { ...form.chambers, on } })}>
        <RangeFields unit={volume} form={form.chambers} set={(chambers) => set({ chambers })} />
      </Choice>
      <Choice
        name="Cam advance"
        on={form.camAdvance.on}
        toggle={(on) => set({ camAdvance: { ...form.camAdvance, on } })}
      >
        <RangeFields unit="crank degrees" form={form.camAdvance} set={(camAdvance) => set({ camAdvance })} />
      </Choice>
      <Choice
        name="Rocker ratio"
        on={form.rockerRatio.on}
        toggle={(on) => set({ rockerRatio: { ...form.rockerRatio, on } })}
      >
        <TextField
          name="Ratios, a semicolon between two"
          value={form.rockerRatio.values}
          set={(values) => set({ rockerRatio: { on: true, values } })}
        />
      </Choice>
      <Choice name="Pushrod length" on={form.pushrods.on} toggle={(on) => set({ pushrods: { ...form.pushrods, on } })}>
        <RangeFields unit={length} form={form.pushrods} set={(pushrods) => set({ pushrods })} />
      </Choice>
    </section>
  );
}

interface ChoiceProps {
  readonly name: string;
  readonly on: boolean;
  readonly toggle: (on: boolean) => void;
  readonly children: React.ReactNode;
}
function Choice({ name, on, toggle, children }: ChoiceProps) {
  return (
    <fieldset className="plain find-choice" data-open={on}>
      <legend className="only-read">{name}</legend>
      <Tick name={name} on={on} toggle={toggle} />
      {on && <div className="find-choice-body stack">{children}</div>}
    </fieldset>
  );
}

function Gaskets({ desk, form, set }: FindChoicesProps) {
  const { gaskets } = form;
  const toggle = (id: string, on: boolean) => {
    const stock = on ? [...gaskets.stock, id] : gaskets.stock.filter((one) => one !== id);
    set({ gaskets: { ...gaskets, stock } });
  };
  return (
    <>
      {stockGaskets(desk.tried).map((one) => (
        <Tick
          key={one.id}
          name={gasketWords(one, desk.shownIn)}
          on={gaskets.stock.includes(one.id)}
          toggle={(on) => toggle(one.id, on)}
        />
      ))}
      <TextField
        name={`Other thicknesses (${formUnit('length', desk.shownIn)}), a semicolon between two`}
        value={gaskets.others}
        set={(others) => set({ gaskets: { ...gaskets, others } })}
      />
    </>
  );
}

/** Pistons of the sheet's stock; those that cannot be chosen stand below with the reason. */
function StockPistons({ desk, form, set }: FindChoicesProps) {
  const { pistons } = form;
  const { offered, left } = pistonsOfStock(desk.tried);
  const toggle = (id: string, on: boolean) => {
    const stock = on ? [...pistons.stock, id] : pistons.stock.filter((one) => one !== id);
    set({ pistons: { ...pistons, stock } });
  };
  return (
    <>
      <Tick
        name="Those that are there may stay"
        on={pistons.keep}
        toggle={(keep) => set({ pistons: { ...pistons, keep } })}
      />
      {offered.map((one) => (
        <Tick
          key={one.id}
          name={pistonWords(one, desk.shownIn)}
          on={pistons.stock.includes(one.id)}
          toggle={(on) => toggle(one.id, on)}
        />
      ))}
      {left.length > 0 && (
        <details className="fit-fold">
          <summary>Of the stock, not to be chosen ({left.length})</summary>
          <ul className="plain fit-opened">
            {left.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

interface PistonsProps {
  readonly rows: readonly PistonForm[];
  readonly length: string;
  readonly volume: string;
  readonly set: (rows: readonly PistonForm[]) => void;
}
function Pistons({ rows, length, volume, set }: PistonsProps) {
  const change = (at: number, part: Partial<PistonForm>) =>
    set(rows.map((row, each) => (each === at ? { ...row, ...part } : row)));
  return (
    <>
      {rows.map((row, at) => (
        // Rows have no name of their own while they are typed.
        // biome-ignore lint/suspicious/noArrayIndexKey: see above
        <fieldset key={at} className="plain find-fields">
          <legend className="field-name">Piston {at + 1}</legend>
          <TextField name="Name" value={row.name} set={(name) => change(at, { name })} />
          <TextField
            name={`Compression height (${length})`}
            value={row.height}
            set={(height) => change(at, { height })}
            figure
          />
          <TextField
            name={`Crown volume with pockets (${volume}), dish positive`}
            value={row.crown}
            set={(crown) => change(at, { crown })}
          />
          <TextField name="Price of the set" value={row.price} set={(price) => change(at, { price })} figure />
        </fieldset>
      ))}
      <div className="row">
        <button type="button" className="button" onClick={() => set([...rows, NO_PISTON])}>
          {rows.length === 0 ? 'Another piston' : 'One more piston'}
        </button>
        {rows.length > 0 && (
          <button type="button" className="button" onClick={() => set(rows.slice(0, -1))}>
            Leave the last one out
          </button>
        )}
      </div>
    </>
  );
}
