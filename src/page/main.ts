// Starts the page.
const page = document.getElementById('page');
if (page) page.textContent = 'Battenbook';
