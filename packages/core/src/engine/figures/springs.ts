import { figuresOf } from './kind.js';

const group = 'springs';
const per = 'valve-kind';

export const springFigures = [
  ...figuresOf(
    { group, quantity: 'length', per },
    {
      'spring-installed-height': {
        title: 'installed height',
        meaning: 'Spring seat to retainer, valve closed, without shims.',
      },
      'spring-shim': { title: 'spring shim', meaning: 'Shims still to go under the spring.', sign: 'not-negative' },
      'spring-free-length': { title: 'free length', meaning: 'Of the spring standing free.' },
      'spring-bind-height': { title: 'bind height', meaning: 'With the coils touching, inner and outer together.' },
      'spring-load-closed-height': {
        title: 'height of the load closed',
        meaning: 'Height on the tester for the first load.',
      },
      'spring-load-open-height': {
        title: 'height of the load open',
        meaning: 'Height on the tester for the second load.',
      },
      'spring-wire': { title: 'spring wire', meaning: 'Diameter of the wire.' },
      'spring-mean-diameter': { title: 'mean coil diameter', meaning: 'Outside diameter of the coil less one wire.' },
      'retainer-room': {
        title: 'room under the retainer',
        meaning: 'Retainer to guide or seal, valve closed.',
        sign: 'any',
      },
    },
  ),
  ...figuresOf(
    { group, quantity: 'force', per },
    {
      'spring-seat-load': { title: 'seat load', meaning: 'At the installed height, without further shims.' },
      'spring-load-closed': {
        title: 'load closed',
        meaning: 'On the tester, at the height printed for the closed valve.',
      },
      'spring-load-open': { title: 'load open', meaning: 'On the tester, at the height printed for the open valve.' },
    },
  ),
  ...figuresOf(
    { group, quantity: 'stiffness', per },
    {
      'spring-rate': { title: 'spring rate', meaning: 'Of the spring; of the outer one where the inner is given too.' },
      'inner-spring-rate': { title: 'rate of the inner spring', meaning: 'Where two springs are given one by one.' },
    },
  ),
  ...figuresOf(
    { group, quantity: 'ratio', per },
    { 'spring-active-coils': { title: 'active coils', meaning: 'Coils that work.' } },
  ),
  ...figuresOf(
    { group, quantity: 'mass', per },
    { 'spring-active-mass': { title: 'mass of the active coils', meaning: 'Weighed, where the wire is not known.' } },
  ),
  ...figuresOf(
    { group, quantity: 'pressure', per: 'engine' },
    { 'spring-modulus': { title: 'shear modulus', meaning: 'Of the spring wire.' } },
  ),
  ...figuresOf(
    { group, quantity: 'density', per: 'engine' },
    { 'spring-density': { title: 'wire density', meaning: 'Of the spring wire.' } },
  ),
];
