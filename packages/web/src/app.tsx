import { type ComponentType, lazy, Suspense } from 'react';
import { Route, Switch } from 'wouter';
import { Home } from './screens/home/index.js';
import { Shell } from './shell/index.js';

interface AtJob {
  readonly job: string;
}
/** Screens fetched when first opened; the first page stays light. */
const Device = lazy(() => import('./screens/device/index.js').then((m) => ({ default: m.DeviceScreen })));
const NewEngine = lazy(() => import('./screens/new-engine/index.js').then((m) => ({ default: m.NewEngine })));
const EngineScreen = lazy(() => import('./screens/engine/index.js').then((m) => ({ default: m.EngineScreen })));

/** Each path of a job and the screen that answers it. */
const jobScreens: readonly (readonly [string, ComponentType<AtJob>])[] = [['/engine/:job', EngineScreen]];

export function App() {
  return (
    <Suspense fallback={<p role="status">Fetching this screen…</p>}>
      <Switch>
        <Route path="/" component={Home} />
        <Route path="/new" component={NewEngine} />
        <Route path="/device" component={Device} />
        {jobScreens.map(([path, Screen]) => (
          <Route key={path} path={path}>
            {(at) => <Screen {...(at as unknown as AtJob)} />}
          </Route>
        ))}
        <Route>
          <NotHere />
        </Route>
      </Switch>
    </Suspense>
  );
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
