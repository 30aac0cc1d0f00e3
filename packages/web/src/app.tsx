import { lazy, Suspense } from 'react';
import { Route, Switch } from 'wouter';
import { Home } from './screens/home/index.js';
import { Shell } from './shell/index.js';

/** Screens fetched when first opened; the first page stays light. */
const Device = lazy(() => import('./screens/device/index.js').then((m) => ({ default: m.DeviceScreen })));
const NewEngine = lazy(() => import('./screens/new-engine/index.js').then((m) => ({ default: m.NewEngine })));
const Gasket = lazy(() => import('./screens/gasket/index.js').then((m) => ({ default: m.GasketScreen })));
const Fasteners = lazy(() => import('./screens/fasteners/index.js').then((m) => ({ default: m.FastenersScreen })));
const Tighten = lazy(() => import('./screens/tighten/index.js').then((m) => ({ default: m.TightenScreen })));
const Combination = lazy(() =>
  import('./screens/combination/index.js').then((m) => ({ default: m.CombinationScreen })),
);
const Subject = lazy(() => import('./screens/combination/index.js').then((m) => ({ default: m.SubjectScreen })));
const Fit = lazy(() => import('./screens/fit/index.js').then((m) => ({ default: m.FitScreen })));
const Decision = lazy(() => import('./screens/fit/index.js').then((m) => ({ default: m.DecisionScreen })));
const Order = lazy(() => import('./screens/order/index.js').then((m) => ({ default: m.OrderScreen })));
const RecordScreen = lazy(() => import('./screens/record/index.js').then((m) => ({ default: m.RecordScreen })));
const Parts = lazy(() => import('./screens/parts/index.js').then((m) => ({ default: m.PartsScreen })));
const Valves = lazy(() => import('./screens/valves/index.js').then((m) => ({ default: m.ValvesScreen })));
const Measure = lazy(() => import('./screens/measure/index.js').then((m) => ({ default: m.MeasureScreen })));
const Worksheet = lazy(() => import('./screens/measure/index.js').then((m) => ({ default: m.WorksheetScreen })));
const Work = lazy(() => import('./screens/work/index.js').then((m) => ({ default: m.WorkScreen })));
const Operation = lazy(() => import('./screens/work/index.js').then((m) => ({ default: m.OperationScreen })));
const WorkBench = lazy(() => import('./screens/work-bench/index.js').then((m) => ({ default: m.WorkBenchScreen })));
const Registers = lazy(() => import('./screens/registers/index.js').then((m) => ({ default: m.RegistersScreen })));
const Start = lazy(() => import('./screens/running/index.js').then((m) => ({ default: m.StartScreen })));
const RunIn = lazy(() => import('./screens/running/index.js').then((m) => ({ default: m.RunInScreen })));
const Tests = lazy(() => import('./screens/running/index.js').then((m) => ({ default: m.TestsScreen })));
const Service = lazy(() => import('./screens/running/index.js').then((m) => ({ default: m.ServiceScreen })));
const EngineScreen = lazy(() => import('./screens/engine/index.js').then((m) => ({ default: m.EngineScreen })));

export function App() {
  return (
    <Suspense fallback={<p role="status">Fetching this screen…</p>}>
      <Switch>
        <Route path="/" component={Home} />
        <Route path="/new" component={NewEngine} />
        <Route path="/device" component={Device} />
        <Route path="/engine/:job">{({ job }) => <EngineScreen job={job} />}</Route>
        <Route path="/engine/:job/gasket/:head">{({ job, head }) => <Gasket key={head} job={job} head={head} />}</Route>
        <Route path="/engine/:job/fasteners/:joint">
          {({ job, joint }) => <Fasteners key={joint} job={job} joint={joint} />}
        </Route>
        <Route path="/engine/:job/tighten/:joint">
          {({ job, joint }) => <Tighten key={joint} job={job} joint={joint} />}
        </Route>
        <Route path="/engine/:job/combination">{({ job }) => <Combination job={job} />}</Route>
        <Route path="/engine/:job/combination/:subject">
          {({ job, subject }) => <Subject key={subject} job={job} subject={subject} />}
        </Route>
        <Route path="/engine/:job/fit">{({ job }) => <Fit job={job} />}</Route>
        <Route path="/engine/:job/fit/:decision/:scope">
          {({ job, decision, scope }) => (
            <Decision key={`${decision} ${scope}`} job={job} decision={decision} scope={scope} />
          )}
        </Route>
        <Route path="/engine/:job/order">{({ job }) => <Order job={job} />}</Route>
        <Route path="/engine/:job/record">{({ job }) => <RecordScreen job={job} />}</Route>
        <Route path="/engine/:job/parts">{({ job }) => <Parts job={job} />}</Route>
        <Route path="/engine/:job/measure">{({ job }) => <Measure job={job} />}</Route>
        <Route path="/engine/:job/measure/:feature">
          {({ job, feature }) => <Worksheet key={feature} job={job} feature={feature} />}
        </Route>
        <Route path="/engine/:job/work">{({ job }) => <Work job={job} />}</Route>
        <Route path="/engine/:job/work/:operation">
          {({ job, operation }) => <Operation key={operation} job={job} operation={operation} />}
        </Route>
        <Route path="/engine/:job/bench/:act?">{({ job, act }) => <WorkBench job={job} act={named(act)} />}</Route>
        <Route path="/engine/:job/registers">{({ job }) => <Registers job={job} />}</Route>
        <Route path="/engine/:job/start/:part?">{({ job, part }) => <Start job={job} part={part} />}</Route>
        <Route path="/engine/:job/run-in">{({ job }) => <RunIn job={job} />}</Route>
        <Route path="/engine/:job/tests">{({ job }) => <Tests job={job} />}</Route>
        <Route path="/engine/:job/service">{({ job }) => <Service job={job} />}</Route>
        <Route path="/engine/:job/valves">{({ job }) => <Valves job={job} />}</Route>
        <Route>
          <NotHere />
        </Route>
      </Switch>
    </Suspense>
  );
}

/** An act's name holds letters that an address writes otherwise. */
function named(act: string | undefined): string | undefined {
  try {
    return act === undefined ? undefined : decodeURIComponent(act);
  } catch {
    return act;
  }
}

function NotHere() {
  return (
    <Shell>
      <h1>There is no screen at this address</h1>
      <p>
        The engines are at <a href="/">the first page</a>.
      </p>
    </Shell>
  );
}
