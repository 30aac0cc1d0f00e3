import type { FindingView } from '@gudgeon/core/workbench';

/** "new 0.020 to 0.060 mm; wear limit at least 0.005 mm"; nothing where no limit is printed. */
export function limitWords({ limit, wearLimit }: FindingView): string {
  return [limit && `new ${limit}`, wearLimit && `wear limit ${wearLimit}`].filter(Boolean).join('; ');
}
