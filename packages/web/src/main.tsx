import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './css/tokens.css';
import './css/base.css';
import './css/controls.css';
import './css/shell.css';
import './css/bench.css';
import './css/marks.css';
import './css/figure.css';
import './css/screens.css';
import './css/parts.css';
import './css/valves.css';
import './css/measure.css';
import './css/photos.css';
import './css/fit.css';
import './css/plots.css';
import './css/combination.css';
import './css/turning.css';
import './css/work.css';
import './css/running.css';
import './css/record.css';
import './css/print.css';
import { App } from './app.js';
import { deviceSettings } from './bench/index.js';
import { sendWhatWaits } from './log/index.js';
import { sendPhotosThatWait } from './photos/keeping/index.js';

document.documentElement.dataset.theme = deviceSettings().theme;
sendWhatWaits();
sendPhotosThatWait();
const root = document.getElementById('root');
if (!root) throw new Error('index.html has no place for the program');
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
