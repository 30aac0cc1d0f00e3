/**
 * The decisions of a builder, by the keys of the project's trade map (D01 to D64), and the calculations that answer them. A decision that
 * is no computation, or that other rooms answer, says so in its note.
 */
export interface ServedDecision {
  readonly question: string;
  readonly calculations: readonly string[];
  /** Where the answer lies when it is not, or not only, a calculation of the catalogue. */
  readonly note?: string;
}

export const decisions: Readonly<Record<string, ServedDecision>> = {
  D01: {
    question: 'Is this core worth its money?',
    calculations: [],
    note: 'a judgement of prices, not a computation of mechanics',
  },
  D02: {
    question: 'Which smallest oversize cleans up every bore?',
    calculations: ['cylinder.oversize', 'cylinder.wall-left'],
  },
  D03: {
    question: 'At which diameter does this worn, shifted bore clean up?',
    calculations: ['cylinder.clean-up', 'cylinder.bored-size'],
  },
  D04: {
    question: 'To which undersize must these journals be ground?',
    calculations: ['bearings.undersize-choice', 'bearings.grind-target'],
  },
  D05: {
    question: 'Which shell halves go to which journal?',
    calculations: [
      'selection.shells-to-journals',
      'bearings.shell-selection',
      'bearings.grade-selection',
      'bearings.mixed-halves',
    ],
  },
  D06: {
    question: 'What is the oil clearance, and how sure is it?',
    calculations: [
      'bearings.oil-clearance',
      'bearings.installed-clearance',
      'metrology.clearance-uncertainty',
      'metrology.verdict',
    ],
  },
  D07: {
    question: 'Does the housing hold its shells?',
    calculations: ['bearings.housing-form', 'bearings.crush', 'bearings.free-spread'],
  },
  D08: {
    question: 'What is this size at 20 °C?',
    calculations: ['metrology.size-at-reference', 'metrology.clearance-at-reference'],
  },
  D09: {
    question: 'Which piston goes to which bore?',
    calculations: ['selection.parts-to-places', 'selection.extra-part', 'cylinder.piston-clearance'],
  },
  D10: {
    question: 'Are the weights matched, and what is the bobweight?',
    calculations: ['balance.bobweight', 'balance.weight-match', 'selection.mass-pairs', 'balance.rod-ends-by-scale'],
  },
  D11: {
    question: 'Do crank, rod and piston meet the deck that is wanted?',
    calculations: ['cylinder.deck-clearance', 'cylinder.deck-stack'],
  },
  D12: {
    question: 'How much off the deck, or which gasket?',
    calculations: ['cylinder.deck-cut', 'cylinder.gasket-for-quench', 'cylinder.head-and-deck-cut'],
  },
  D13: {
    question: 'What is the compression ratio, and how does it spread?',
    calculations: ['cylinder.compression-ratio', 'cylinder.ratio-spread', 'cylinder.burette-volume'],
  },
  D14: {
    question: 'What is trapped when the intake closes?',
    calculations: ['cylinder.effective-ratio', 'cylinder.cranking-pressure', 'cylinder.air-pressure'],
  },
  D15: {
    question: 'How far is the piston from the head?',
    calculations: ['cylinder.quench', 'cylinder.gasket-for-quench'],
  },
  D16: {
    question: 'Which parts make the ratio at the quench?',
    calculations: [
      'cylinder.choose-parts',
      'cylinder.chamber-for-ratio',
      'cylinder.piston-for-ratio',
      'cylinder.gasket-for-ratio',
      'cylinder.deck-for-ratio',
    ],
  },
  D17: {
    question: 'How wide must the ring gap be, and how much is filed?',
    calculations: ['cylinder.ring-gap', 'cylinder.ring-filing', 'cylinder.ring-gap-tapered', 'cylinder.ring-gap-hot'],
  },
  D18: {
    question: 'Which ring goes to which bore?',
    calculations: ['cylinder.ring-allocation', 'selection.parts-to-places'],
  },
  D19: {
    question: 'How fast does the piston go, how hard is it pulled?',
    calculations: ['crank.motion', 'crank.peak-speed', 'crank.mean-piston-speed'],
  },
  D20: {
    question: 'Do rod and counterweight clear everything over a turn?',
    calculations: [],
    note: 'needs the shapes of the parts; measured on the engine',
  },
  D21: {
    question: 'What does another lubricant do to this torque?',
    calculations: ['fasteners.torque-at-other-nut-factor', 'fasteners.preload-band', 'fasteners.torque-columns'],
  },
  D22: {
    question: 'Do torque and stretch agree?',
    calculations: ['fasteners.stretch', 'fasteners.preload-from-stretch', 'fasteners.preload-from-torque'],
  },
  D23: { question: 'May this bolt be used again?', calculations: ['fasteners.permanent-set'] },
  D24: {
    question: 'Is the bolt long enough, and does it bottom?',
    calculations: ['fasteners.bolt-depth', 'fasteners.thread-engagement'],
  },
  D25: {
    question: 'Which bolt is next, in which stage?',
    calculations: ['fasteners.centre-outward-order', 'fasteners.cross-pattern', 'fasteners.stages'],
    note: 'the walk itself is core/plan',
  },
  D26: {
    question: 'How much of the angle is left?',
    calculations: ['fasteners.remaining-angle', 'fasteners.preload-from-angle'],
  },
  D27: {
    question: 'Which thrust washers make the end float right?',
    calculations: ['bearings.end-float', 'bearings.thrust-washers'],
  },
  D28: { question: 'What did line boring do to chain and gears?', calculations: ['cam.centre-shift'] },
  D29: { question: 'Where is true top dead centre?', calculations: ['crank.stop-method', 'crank.dead-centres'] },
  D30: {
    question: 'Where are the lobe’s centreline and events?',
    calculations: [
      'cam.centreline-from-lobe',
      'cam.centreline-from-pairs',
      'cam.events-from-table',
      'cam.indicator-error',
    ],
  },
  D31: { question: 'Which offset corrects the cam timing?', calculations: ['cam.offset-choice', 'cam.offset-part'] },
  D32: { question: 'Is this the cam of the card?', calculations: ['cam.card-check'] },
  D33: {
    question: 'How near does a valve come to its piston, and where?',
    calculations: ['valvetrain.valve-to-piston', 'valvetrain.valve-to-piston-from-card'],
  },
  D34: { question: 'How far may the cam be moved?', calculations: ['valvetrain.cam-window'] },
  D35: { question: 'What do the final gasket and lash do to that room?', calculations: ['valvetrain.gap-correction'] },
  D36: {
    question: 'How long must the pushrods be?',
    calculations: ['valvetrain.pushrod-length', 'valvetrain.pushrod-trials', 'valvetrain.pushrod-half-lift'],
  },
  D37: {
    question: 'Where does the rocker run on the stem?',
    calculations: ['valvetrain.rocker-motion', 'valvetrain.rocker-sweep'],
  },
  D38: {
    question: 'Which shim goes under which spring?',
    calculations: ['selection.spring-shims', 'selection.spring-load-shims', 'valvetrain.spring-loads'],
  },
  D39: {
    question: 'Does the spring follow the lobe?',
    calculations: [
      'valvetrain.follow-force',
      'valvetrain.separation-speed',
      'valvetrain.spring-surge',
      'valvetrain.moving-mass',
    ],
  },
  D40: {
    question: 'How many turns make the preload?',
    calculations: ['valvetrain.preload-from-turns', 'valvetrain.turns-from-preload', 'valvetrain.lash-per-turn'],
  },
  D41: { question: 'What is the hot lash set cold?', calculations: ['valvetrain.hot-lash'] },
  D42: {
    question: 'Which valves may be set here?',
    calculations: ['valve-setting.base-circle-windows', 'cam.seat-windows'],
  },
  D43: { question: 'With how few stops are all valves set?', calculations: ['valve-setting.crank-stops'] },
  D44: {
    question: 'Which shims, with the fewest bought?',
    calculations: ['selection.shim-pool', 'selection.shim-choice', 'selection.extra-shim'],
  },
  D45: { question: 'Where may the cam be turned without meeting a piston?', calculations: ['valvetrain.park-angle'] },
  D46: {
    question: 'Which seal under which liner?',
    calculations: ['selection.liner-seals', 'metrology.liner-protrusion'],
  },
  D47: {
    question: 'Which gasket grade for these pistons?',
    calculations: ['metrology.gasket-grade', 'cylinder.deck-readings'],
  },
  D48: {
    question: 'What is left of the head, and how does the intake face fit?',
    calculations: ['cylinder.intake-face', 'cylinder.angle-mill', 'cylinder.mill-for-volume'],
  },
  D49: { question: 'Is the pickup right over the floor of the pan?', calculations: ['fits.pickup-clearance'] },
  D50: {
    question: 'What must be bought, and how much?',
    calculations: [],
    note: 'a list made from the sheet: the work plan',
  },
  D51: { question: 'What will it take and cost?', calculations: [], note: 'a forecast from entries, not mechanics' },
  D52: {
    question: 'What must be done again after this change?',
    calculations: [],
    note: 'a graph of the work: core/plan',
  },
  D53: { question: 'Where may the work rest?', calculations: [], note: 'the work plan' },
  D54: {
    question: 'Is this reading a slip?',
    calculations: [
      'metrology.sister-readings',
      'metrology.outlier-grubbs',
      'metrology.outlier-dixon',
      'metrology.outlier-robust',
    ],
  },
  D55: {
    question: 'Where does the rotor point?',
    calculations: ['crank.firing-tops'],
    note: 'half the crank angle of each firing',
  },
  D56: {
    question: 'Which piston made the crank turn harder?',
    calculations: ['metrology.between-groups', 'metrology.outlier-robust'],
  },
  D57: { question: 'Is a cylinder down?', calculations: ['metrology.leakage', 'metrology.compression-spread'] },
  D58: { question: 'When must the start be stopped?', calculations: [], note: 'a rule with a clock: the work plan' },
  D59: { question: 'How is this engine run in?', calculations: [], note: 'the sheet’s schedule' },
  D60: {
    question: 'Is re-tightening due, or forbidden?',
    calculations: ['fasteners.retorque-dwell', 'fasteners.embedding-loss'],
    note: 'the gasket maker’s sheet decides',
  },
  D61: { question: 'May this part be used again?', calculations: ['metrology.wear-limit', 'metrology.verdict'] },
  D62: {
    question: 'What room is left hot and at speed?',
    calculations: ['valvetrain.hot-margin', 'cylinder.hot-quench'],
  },
  D63: { question: 'How are ring gaps and rods turned?', calculations: [], note: 'a picture from the layout' },
  D64: { question: 'What does the torque plate do to the bore?', calculations: ['metrology.plate-change'] },
};
