/**
 * Who may import whom. The table is in docs/map.md; every rule's comment says where a wrong import belongs instead.
 * `scripts/arrows.mjs` runs these rules, proves on a planted violation that they bite, and fails on an empty run.
 */
export function rulesFor(root) {
  const core = (room) => `${root}packages/core/src/${room}/`;
  const tests = String.raw`\.(test|suite)\.tsx?$`;

  /** A room of core, the other rooms it may use, and where to go when it needs more. */
  const rooms = [
    ['quantity', [], 'quantity stands alone: a unit or a number knows nothing of engines'],
    ['sources', [], 'sources stands alone: it is the bibliography'],
    ['calc', ['quantity', 'sources'], 'calc takes plain quantities; bring engine and calc together in workbench'],
    [
      'engine',
      ['quantity', 'sources'],
      'engine is the sheet; a computation belongs in calc, a meeting of both in workbench',
    ],
    ['assess', ['quantity', 'sources', 'calc', 'engine'], 'assess judges; plans and log belong in workbench'],
    ['plan', ['quantity', 'engine', 'calc'], 'plan knows no log and no screen; bring them together in workbench'],
    ['record', ['quantity', 'engine', 'plan'], 'record keeps facts; what follows from them belongs in workbench'],
    [
      'drawing',
      ['quantity', 'engine', 'calc', 'assess'],
      'drawing gets its marks as arguments; choose them in workbench',
    ],
    [
      'workbench',
      ['quantity', 'sources', 'calc', 'engine', 'assess', 'plan', 'record', 'drawing'],
      'workbench is the top of core',
    ],
  ];

  const roomRules = rooms.map(([room, may, advice]) => ({
    name: `core-${room}`,
    severity: 'error',
    comment: `${advice}.`,
    from: { path: `^${core(room)}`, pathNot: tests },
    to: { path: `^${core('[^/]+')}`, pathNot: [`^${core(room)}`, ...may.map((other) => `^${core(other)}`)] },
  }));

  /** A package and what it may import of ours. */
  const packages = [
    ['core', [], 'core is pure and knows no other package'],
    ['store', ['core/src/record/'], 'a store keeps envelopes and knows nothing else of core'],
    ['report', ['core/src/(workbench|drawing|quantity|engine|record)/'], 'report arranges what the workbench answers'],
    [
      'server',
      ['core/src/(workbench|quantity|engine|assess|record|plan)/', 'store/src/', 'report/src/'],
      'the server parses, asks the workbench and shows; a rule of the trade belongs in core',
    ],
    [
      'cli',
      ['core/src/', 'store/src/', 'report/src/'],
      'a command parses, asks core and prints; it knows no server and no web',
    ],
    [
      'web',
      ['core/src/', 'report/src/', 'store/src/browser/', 'server/src/api/'],
      'the web asks core, and the server only through its request and reply types',
    ],
  ];
  const packageRules = packages.map(([name, may, advice]) => ({
    name: `package-${name}`,
    severity: 'error',
    comment: `${advice}.`,
    from: { path: `^${root}packages/${name}/src/`, pathNot: tests },
    to: {
      path: `^${root}packages/`,
      pathNot: [`^${root}packages/${name}/src/`, ...may.map((other) => `^${root}packages/${other}`)],
    },
  }));

  return {
    forbidden: [
      ...roomRules,
      ...packageRules,
      {
        name: 'no-cycles',
        severity: 'error',
        comment: 'Two files that need each other are one idea or three: merge them or lift the shared part out.',
        from: { path: `^${root}packages/[^/]+/src/` },
        to: { circular: true },
      },
      {
        name: 'core-is-pure',
        severity: 'error',
        comment: 'core has no disk, network or clock: let the caller hand the value in.',
        from: { path: `^${root}packages/core/src/`, pathNot: tests },
        to: { dependencyTypes: ['core'] },
      },
      {
        name: 'schema-behind-its-door',
        severity: 'error',
        comment: 'zod and yaml are heavy: only engine/load uses them, so that the first page stays small.',
        from: { path: `^${root}packages/core/src/`, pathNot: [`^${core('engine/load')}`, tests] },
        to: { path: 'node_modules/(zod|yaml)/' },
      },
      {
        name: 'load-from-outside-only',
        severity: 'error',
        comment: 'engine/load is an entry of its own; inside core use the Engine model.',
        from: { path: `^${root}packages/core/src/`, pathNot: [`^${core('engine/load')}`, tests] },
        to: { path: `^${core('engine/load')}` },
      },
      {
        name: 'nothing-unresolved',
        severity: 'error',
        comment: 'The import leads nowhere.',
        from: { path: `^${root}packages/`, pathNot: tests },
        to: { couldNotResolve: true },
      },
    ],
    options: {
      doNotFollow: { path: 'node_modules' },
      exclude: { path: '(^|/)dist/' },
      tsPreCompilationDeps: true,
      enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['source', 'import', 'types', 'default'] },
    },
  };
}

export default rulesFor('');
