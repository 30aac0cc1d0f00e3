import type { OrderView } from '@gudgeon/core/workbench';
import { documentHtml, orderDocument } from '@gudgeon/report';
import { saveFile } from '../../shell/index.js';

/** Hands the order to the person as one file that stands by itself: it goes to the shop by mail or on a stick. */
export const saveOrder = (view: OrderView): void => saveFile(view.title, 'html', documentHtml(orderDocument(view)));
