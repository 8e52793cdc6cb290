
(() => {
  'use strict';
  const STEP_MS = 1600;
  const get = id => document.getElementById(id);
  const replay = get('replay'), at = get('at'), play = get('play'), speed = get('speed'), told = get('told');
  const steps = [...document.querySelectorAll('.step')];
  const ticks = [...document.querySelectorAll('.tick')];
  const scroll = document.querySelector('.scroll');
  const last = steps.length - 1;
  let now = 0;
  let timer = 0;

  const show = to => {
    now = Math.max(0, Math.min(last, to));
    steps.forEach((step, i) => step.classList.toggle('now', i === now));
    ticks.forEach((tick, i) => {
      tick.classList.toggle('past', i <= now);
      if (i === now) tick.setAttribute('aria-current', 'step');
      else tick.removeAttribute('aria-current');
    });
    const said = steps[now].querySelector('.place').textContent + ': ' + steps[now].querySelector('h3').textContent;
    at.value = now;
    at.setAttribute('aria-valuetext', said);
    const found = [...steps[now].querySelectorAll('.found > li > p:nth-of-type(1)')].map(p => p.textContent);
    told.textContent = [said, ...found].join('. ');
    for (const [id, off] of [['first', now === 0], ['back', now === 0], ['on', now === last], ['last', now === last],
      ['finding-back', finding(-1) < 0], ['finding-on', finding(1) < 0]]) get(id).setAttribute('aria-disabled', off);
    const tick = ticks[now].parentElement;
    const left = tick.offsetLeft - 2 * tick.offsetWidth, right = tick.offsetLeft + 3 * tick.offsetWidth;
    if (left < scroll.scrollLeft) scroll.scrollLeft = left;
    if (right > scroll.scrollLeft + scroll.clientWidth) scroll.scrollLeft = right - scroll.clientWidth;
  };

  /** The next step in a direction that decided a finding, or -1. */
  const finding = by => {
    for (let i = now + by; i >= 0 && i <= last; i += by) if (steps[i].classList.contains('decides')) return i;
    return -1;
  };
  const toFinding = by => { if (finding(by) >= 0) go(finding(by)); };

  const stop = () => {
    clearTimeout(timer);
    timer = 0;
    play.textContent = 'Play';
    told.setAttribute('aria-live', 'polite');
  };
  const go = to => { stop(); show(to); };
  const runOn = () => {
    timer = setTimeout(() => {
      show(now + 1);
      if (now === last) stop();
      else runOn();
    }, STEP_MS / Number(speed.value));
  };
  const playOrPause = () => {
    if (timer) return stop();
    if (now === last) show(0);
    play.textContent = 'Pause';
    // what runs by is not read aloud
    told.setAttribute('aria-live', 'off');
    runOn();
  };
  const faster = by => {
    speed.selectedIndex = Math.max(0, Math.min(speed.length - 1, speed.selectedIndex + by));
    speed.dispatchEvent(new Event('change'));
  };

  at.addEventListener('input', () => go(Number(at.value)));
  speed.addEventListener('change', () => {
    if (!timer) return;
    clearTimeout(timer);
    runOn();
  });
  const press = { first: () => go(0), back: () => go(now - 1), play: playOrPause, on: () => go(now + 1),
    last: () => go(last), 'finding-back': () => toFinding(-1), 'finding-on': () => toFinding(1) };
  for (const id of Object.keys(press)) get(id).addEventListener('click', press[id]);
  ticks.forEach((tick, i) => {
    tick.tabIndex = -1;
    tick.addEventListener('click', event => {
      event.preventDefault();
      go(i);
      at.focus({ preventScroll: true });
    });
  });

  document.addEventListener('keydown', event => {
    if (event.ctrlKey || event.altKey || event.metaKey || event.target === speed) return;
    const within = replay.contains(event.target);
    const pressed = event.target.closest && event.target.closest('button, a, summary');
    const by = event.shiftKey;
    const does = {
      ArrowRight: () => by ? toFinding(1) : go(now + 1),
      ArrowLeft: () => by ? toFinding(-1) : go(now - 1),
      Home: within && (() => go(0)),
      End: within && (() => go(last)),
      ArrowUp: within && (() => faster(1)),
      ArrowDown: within && (() => faster(-1)),
      ' ': within && !pressed && playOrPause,
    }[event.key];
    // a table too wide for the window is scrolled by the arrows
    if (!does || (event.target.closest && event.target.closest('.wide'))) return;
    event.preventDefault();
    does();
  });

  const toHash = () => {
    const step = /^#step-(\d+)$/.exec(location.hash);
    if (!step) return;
    go(Number(step[1]));
    replay.scrollIntoView();
    at.focus({ preventScroll: true });
  };
  addEventListener('hashchange', toHash);

  document.documentElement.classList.add('stepped');
  at.hidden = false;
  get('controls').hidden = false;
  show(0);
  toHash();
})();
