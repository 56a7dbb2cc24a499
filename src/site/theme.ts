const KEY = 'frameworthy-theme';
const CHOICES = ['system', 'light', 'dark'] as const;
type Choice = (typeof CHOICES)[number];

const LABELS: Record<Choice, string> = { system: 'Paper: as the system', light: 'Paper: light', dark: 'Paper: dark' };

/** Storage may be refused (private windows, some browsers from disk): the choice then lasts for the page. */
function remembered(): Choice {
  try {
    const stored = localStorage.getItem(KEY);
    return CHOICES.find((choice) => choice === stored) ?? 'system';
  } catch {
    return 'system';
  }
}

function remember(choice: Choice): void {
  try {
    localStorage.setItem(KEY, choice);
  } catch {
    // Nothing to do: the page shows the choice all the same.
  }
}

function show(choice: Choice): void {
  if (choice === 'system') delete document.documentElement.dataset['theme'];
  else document.documentElement.dataset['theme'] = choice;
}

/** Wires the button in the header: system, light, dark in turn. */
export function startThemeChoice(): void {
  document.documentElement.classList.add('scripted');
  let choice = remembered();
  show(choice);
  const button = document.querySelector<HTMLButtonElement>('.theme-choice');
  if (!button) return;
  button.textContent = LABELS[choice];
  button.addEventListener('click', () => {
    choice = CHOICES[(CHOICES.indexOf(choice) + 1) % CHOICES.length] as Choice;
    button.textContent = LABELS[choice];
    show(choice);
    remember(choice);
  });
}
