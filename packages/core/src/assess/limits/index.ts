export { type KnownPart, type LimitPlace, limitsOf } from './limits-of.js';
export { PROPERTIES, type Property } from './properties.js';
export { propertiesOfLimit, propertyOfLimit, whyNoSize } from './property-of-limit.js';
export { loadHeight } from './scope-words.js';
export { newWindow, wearWindow } from './windows.js';
