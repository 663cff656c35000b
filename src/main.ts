import './style/paper.css';
import './style/controls.css';
import './style/window.css';
import './style/views.css';
import './style/print.css';
import { start } from './app/start.ts';
import { showWindow } from './views/showWindow.tsx';

const host = document.getElementById('app');
if (host !== null) void start().then(() => showWindow(host));
