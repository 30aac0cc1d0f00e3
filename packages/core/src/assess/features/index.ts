export { FEATURE_RULES } from './rules.js';
