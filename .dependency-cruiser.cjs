/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    {
      name: 'domain-is-pure',
      comment:
        'The domain decides; it does not read, write or draw. Take what it needs as an argument, or declare a port.',
      severity: 'error',
      from: { path: '^src/domain/' },
      to: { pathNot: ['^src/domain/', '^node_modules/(zod|date-fns|uqr)/'] },
    },
    {
      name: 'dates-only-in-calendar',
      comment: 'One module knows date-fns, so that day arithmetic has one meaning.',
      severity: 'error',
      from: { path: '^(src/domain|demo-data)/', pathNot: '^src/domain/core/calendar[.]ts$' },
      to: { path: '^node_modules/date-fns/' },
    },
    {
      name: 'rules-do-not-know-each-other',
      comment: 'A rule reads the state, the protocol and the sources. Only all.ts lists rules.',
      severity: 'error',
      from: { path: '^src/domain/rules/rule-', pathNot: '/all[.]ts$' },
      to: { path: '^src/domain/rules/rule-' },
    },
    {
      name: 'store-knows-only-the-domain',
      comment: 'Storage implements the ports. It has no opinion on screens.',
      severity: 'error',
      from: { path: '^src/store/' },
      to: {
        pathNot: [
          '^src/store/',
          '^src/domain/',
          '^node_modules/(zod|idb-keyval|fflate|@zip[.]js|@noble)/',
        ],
      },
    },
    {
      name: 'worker-wires-domain-and-store',
      comment: 'The worker runs pure functions over the stored log, away from the page.',
      severity: 'error',
      from: { path: '^src/worker/' },
      to: {
        pathNot: [
          '^src/worker/',
          '^src/domain/',
          '^src/store/',
          '^src/workbook/',
          '^demo-data/',
          '^(node_modules/)?highs/',
        ],
      },
    },
    {
      name: 'workbook-knows-no-snakes',
      comment: 'It turns files into tables of text. What a column means is decided in the domain.',
      severity: 'error',
      from: { path: '^src/workbook/' },
      to: {
        pathNot: [
          '^src/workbook/',
          '^src/domain/(core|csv)/',
          '^src/domain/sheet/grid[.]ts$',
          '^(node_modules/)?(fflate|saxen)/',
        ],
      },
    },
    {
      name: 'solver-only-in-planner',
      comment: 'The planner knows the solver of plans; all others know the port.',
      severity: 'error',
      from: { pathNot: '^src/worker/planner/(highs-solver|planner)[.]ts$' },
      to: { path: '^(node_modules/)?highs/' },
    },
    {
      name: 'demo-data-knows-only-the-domain',
      comment: 'The invented collection is made of events, like any other.',
      severity: 'error',
      from: { path: '^demo-data/' },
      to: { pathNot: ['^demo-data/', '^src/domain/'] },
    },
    {
      name: 'page-reaches-the-log-through-the-port',
      comment: 'A screen asks the model; the model asks the port. Only src/app starts the worker.',
      severity: 'error',
      from: { path: '^src/ui/' },
      to: { path: ['^src/(store|worker|sw|app)/', '^demo-data/', '^node_modules/idb-keyval/'] },
    },
    {
      name: 'components-are-leaves',
      comment: 'Components and charts take props. They know neither screens nor the model.',
      severity: 'error',
      from: { path: '^src/ui/(components|charts)/' },
      to: { path: ['^src/ui/screens/', '^src/ui/model[.]ts$'] },
    },
    {
      name: 'camera-knows-no-snakes',
      comment: 'The scanner turns pictures into text. What the text means is decided elsewhere.',
      severity: 'error',
      from: { path: '^src/scan/' },
      to: { pathNot: ['^src/scan/', '^(node_modules/)?(html5-qrcode|zxing-wasm)/'] },
    },
    {
      name: 'service-worker-stands-alone',
      comment: 'It must install when the rest is broken.',
      severity: 'error',
      from: { path: '^src/sw/', pathNot: '^src/sw/evening/' },
      to: { pathNot: ['^src/sw/', '^node_modules/workbox-'] },
    },
    {
      name: 'evening-is-run-only-when-woken',
      comment: 'A file of its own beside the service worker, run at a wake-up alone.',
      severity: 'error',
      from: { path: '^src/sw/', pathNot: '^src/sw/evening/' },
      to: { path: '^src/sw/evening/', dependencyTypesNot: ['type-import', 'type-only'] },
    },
    {
      name: 'evening-knows-domain-and-store',
      comment: 'Away from the page, the same rules run over the same log.',
      severity: 'error',
      from: { path: '^src/sw/evening/' },
      to: { pathNot: ['^src/(domain|store|sw/evening)/', '^src/sw/tag[.]ts$'] },
    },
    {
      name: 'no-cycles',
      comment: 'Two modules that need each other are one module, or three.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'nothing-unused',
      comment: 'A module nobody reaches is deleted, not kept.',
      severity: 'error',
      from: {
        orphan: true,
        path: '^src/',
        pathNot: '[.]d[.]ts$|^src/(sw/sw|worker/worker|scan/decoder/decoder|app/main)[.]tsx?$',
      },
      to: {},
    },
    {
      name: 'src-never-imports-tests',
      comment: 'Tests may know the code; not the other way round.',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: '^(tests|e2e)/' },
    },
  ],
  options: {
    tsPreCompilationDeps: true, // Type-only imports count: they are dependencies of thought.
    doNotFollow: { path: 'node_modules' },
  },
};
