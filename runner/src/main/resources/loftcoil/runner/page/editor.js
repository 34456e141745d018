// The Java editor: highlighting, suggestions from Loftcoil, marked lines. Tab moves on like everywhere else, until
// something is typed; then it types spaces. Esc leaves, and from then on Tab moves on again.
/* global CodeMirror */
import * as api from './api.js';
import { el } from './dom.js';

/** Less of it than that within the window is hardly seen. */
const NEAR_PX = 40;
const PLAIN_CHARS = /[A-Za-z0-9_$]/;

/**
 * Puts an editor into `place`, which must be in the page already.
 * @param {{label: string, source: string, lesson: string, step: string, changed: Function, run: Function, leave: Function}} how
 */
export function makeEditor(place, how) {
  const editor = CodeMirror(place, {
    value: how.source,
    mode: 'text/x-java',
    theme: 'loftcoil',
    indentUnit: 4,
    lineNumbers: true,
    lineWrapping: true,
    viewportMargin: Infinity,
    matchBrackets: true,
    autoCloseBrackets: true,
    screenReaderLabel: how.label,
    inputStyle: 'contenteditable',
    extraKeys: {
      Tab: (cm) => (cm.somethingSelected() ? cm.indentSelection('add') : cm.replaceSelection('    ')),
      'Shift-Tab': (cm) => cm.indentSelection('subtract'),
      'Ctrl-Enter': () => how.run(),
      'Cmd-Enter': () => how.run(),
      'Ctrl-Space': (cm) => suggest(cm, how),
      Esc: () => how.leave(),
    },
  });
  letTabMoveOn(editor);
  editor.on('focus', showInWindow);
  const field = editor.getInputField();
  field.setAttribute('aria-label', how.label);
  field.setAttribute('role', 'textbox');
  field.setAttribute('aria-multiline', 'true');
  editor.on('change', (cm, change) => {
    if (change.origin === 'setValue') return;
    how.changed(cm.getValue());
    if (change.origin === '+input' && change.text.length === 1 && change.text[0] === '.') suggest(cm, how, true);
  });
  window.requestAnimationFrame(() => editor.refresh());
  return wrapped(editor);
}

/** Browsers follow Tab to a field, but not always to this one: its text is placed by itself. */
function showInWindow(editor) {
  const frame = editor.getWrapperElement();
  const { top, bottom } = frame.getBoundingClientRect();
  if (bottom < NEAR_PX || top > window.innerHeight - NEAR_PX) frame.scrollIntoView({ block: 'nearest' });
}

/** Nobody who only passes through may be caught, nor leave spaces behind: WCAG 2.2, 2.1.2. */
function letTabMoveOn(editor) {
  let typing = false;
  editor.on('blur', () => { typing = false; });
  editor.on('change', (cm, change) => { if (/^[+*]|paste|cut|undo|redo/.test(change.origin || '')) typing = true; });
  editor.on('keydown', (cm, event) => {
    if (event.key === 'Tab' && !typing && !cm.state.completionActive) event.codemirrorIgnore = true;
  });
}

function wrapped(editor) {
  let marked = [];
  return {
    text: () => editor.getValue(),
    setText: (text) => editor.setValue(text),
    focus: () => editor.focus(),
    refresh: () => editor.refresh(),
    mark(lines) {
      for (const handle of marked) editor.removeLineClass(handle, 'wrap', 'line-problem');
      marked = lines.filter((line) => line >= 1 && line <= editor.lineCount())
        .map((line) => editor.addLineClass(line - 1, 'wrap', 'line-problem'));
    },
    goTo(line, column) {
      editor.focus();
      editor.setCursor({ line: Math.max(0, line - 1), ch: Math.max(0, column - 1) });
    },
    /** Puts lines out of sight behind a word in their place, which brings them back; gives back what shows them all. */
    fold(folds, shown) {
      const marks = folds.map(({ from, to }) => {
        const word = el('span', { class: 'folded' }, ` … ${to - from + 1} more lines`);
        const mark = editor.markText({ line: from - 2, ch: editor.getLine(from - 2).length }, { line: to - 1, ch: editor.getLine(to - 1).length },
          { collapsed: true, replacedWith: word, clearOnEnter: true, inclusiveLeft: false, inclusiveRight: false });
        word.addEventListener('click', () => mark.clear());
        mark.on('clear', () => { if (!marks.some((each) => each !== mark && each.find())) shown(); });
        return mark;
      });
      return () => { for (const mark of marks) mark.clear(); };
    },
  };
}

function offered(place, each) {
  place.append(el('span', {}, each.text));
  if (each.meaning) place.append(el('span', { class: 'meaning' }, each.meaning));
}

async function find(cm, how) {
  const source = cm.getValue();
  const cursor = cm.indexFromPos(cm.getCursor());
  const list = await api.complete(how.lesson, how.step, source, cursor);
  const start = list.length ? list[0].from : cursor;
  return {
    from: cm.posFromIndex(start),
    to: cm.getCursor(),
    list: list.map((each) => ({
      text: each.text, from: cm.posFromIndex(each.from), to: cm.getCursor(), render: (place) => offered(place, each),
    })),
  };
}

function suggest(cm, how, afterDot = false) {
  // A dot within a number or a comment wants no list.
  const token = cm.getTokenAt(cm.getCursor());
  if (afterDot && /comment|string|number/.test(token.type || '')) return;
  cm.showHint({
    hint: (editor) => find(editor, how).catch(() => null),
    completeSingle: !afterDot,
    closeCharacters: /[\s()[\]{};:>,]/,
    updateOnCursorActivity: PLAIN_CHARS.test(token.string) || afterDot,
  });
}
