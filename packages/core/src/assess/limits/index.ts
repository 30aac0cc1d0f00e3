export { PAIRS, PROPERTIES, type Property, SPREADS } from './properties.js';
