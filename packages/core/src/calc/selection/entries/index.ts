import type { Calculation } from '../../catalogue/index.js';
import { commonSpringHeight } from './common-spring-height.js';
import { extraPartEntry } from './extra-part.js';
import { extraShim } from './extra-shim.js';
import { linerSealsEntry } from './liner-seals.js';
import { massGroupsEntry } from './mass-groups.js';
import { massPairsEntry } from './mass-pairs.js';
import { partsToPlacesEntry } from './parts-to-places.js';
import { partsWithShopEntry } from './parts-with-shop.js';
import { shellsToJournalsEntry } from './shells-to-journals.js';
import { shimChoice } from './shim-choice.js';
import { shimPool } from './shim-pool.js';
import { springLoadShimsEntry } from './spring-load-shims.js';
import { springShimsEntry } from './spring-shims.js';
import { tableAssignment } from './table-assignment.js';

/** One file an entry, one line here. */
export const selectionCalculations: readonly Calculation[] = [
  shimChoice,
  shimPool,
  extraShim,
  partsToPlacesEntry,
  extraPartEntry,
  partsWithShopEntry,
  shellsToJournalsEntry,
  springShimsEntry,
  springLoadShimsEntry,
  commonSpringHeight,
  linerSealsEntry,
  massGroupsEntry,
  massPairsEntry,
  tableAssignment,
];
