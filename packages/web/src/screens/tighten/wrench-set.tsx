import type { WrenchView } from '@gudgeon/core/workbench';

/** What to set on the wrench in the hand, beside the sheet's figure and never instead of it; loud where it does not fit. */
export function WrenchSet({ wrench }: { readonly wrench: WrenchView }) {
  if (wrench.state === 'does-not-fit') {
    return (
      <p className="still-open" data-wrench={wrench.state}>
        {wrench.words}
      </p>
    );
  }
  if (!wrench.set) return null;
  return (
    <p className="wrench-set" data-wrench={wrench.state}>
      Set the wrench to{' '}
      <strong>
        {wrench.set.number} {wrench.set.unit}
      </strong>
    </p>
  );
}
