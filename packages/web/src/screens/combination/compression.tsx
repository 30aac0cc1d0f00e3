import { compressionView } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import type { OpenJob } from '../../shell/index.js';
import { SubjectFrame } from './subject-frame.js';
import { useCombination } from './use-combination.js';

/** Compression built up part by part, cylinder by cylinder. */
export function Compression({ open }: { readonly open: OpenJob }) {
  const desk = useCombination(open);
  const { bench, tried, shownIn } = desk;
  const view = useMemo(() => compressionView(bench, tried, shownIn, {}), [bench, tried, shownIn]);
  return <SubjectFrame desk={desk} view={view} />;
}
