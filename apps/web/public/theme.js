// Sets the chosen theme before the first paint; a file of its own because the page allows no inline script.
(() => {
  let choice = 'system';
  try {
    choice = localStorage.getItem('scantling-theme') ?? 'system';
  } catch {
    // Storage can be switched off; the system's choice then holds.
  }
  if (choice === 'light' || choice === 'dark') document.documentElement.dataset.theme = choice;
})();
