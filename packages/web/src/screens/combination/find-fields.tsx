import type { CutForm, RangeForm } from '@gudgeon/core/workbench';
import { TextField } from '../../bench/index.js';

interface TickProps {
  readonly name: string;
  readonly on: boolean;
  readonly toggle: (on: boolean) => void;
}
export function Tick({ name, on, toggle }: TickProps) {
  return (
    <label className="choice">
      <input type="checkbox" checked={on} onChange={(event) => toggle(event.target.checked)} />
      {name}
    </label>
  );
}

interface RangeFieldsProps {
  readonly unit: string;
  readonly form: RangeForm;
  readonly set: (form: RangeForm) => void;
}
/** Values evenly stepped between two ends. */
export function RangeFields({ unit, form, set }: RangeFieldsProps) {
  return (
    <div className="find-fields">
      <TextField name={`From (${unit})`} value={form.from} set={(from) => set({ ...form, from })} />
      <TextField name={`To (${unit})`} value={form.to} set={(to) => set({ ...form, to })} />
      <TextField name={`In steps of (${unit})`} value={form.step} set={(step) => set({ ...form, step })} figure />
      <TextField name="Price" value={form.price} set={(price) => set({ ...form, price })} figure />
    </div>
  );
}

interface CutFieldsProps {
  readonly unit: string;
  readonly form: CutForm;
  /** More than one face can be cut. */
  readonly banks: boolean;
  readonly set: (form: CutForm) => void;
}
/** A cut from nothing to its limit. */
export function CutFields({ unit, form, banks, set }: CutFieldsProps) {
  return (
    <>
      <div className="find-fields">
        <TextField name={`At most (${unit})`} value={form.limit} set={(limit) => set({ ...form, limit })} figure />
        <TextField name={`In steps of (${unit})`} value={form.step} set={(step) => set({ ...form, step })} figure />
        <TextField name="Price of cutting" value={form.price} set={(price) => set({ ...form, price })} figure />
      </div>
      {banks && <Tick name="Each bank by itself" on={form.each} toggle={(each) => set({ ...form, each })} />}
    </>
  );
}
