// Read by any browser, however old: says so where the page itself cannot be read.
window.setTimeout(function () {
  var waiting = document.getElementById('waiting');
  if (waiting) {
    waiting.textContent = 'The lesson has not opened. Loftcoil may still be starting; or this browser is too old for the page: '
      + 'it needs about Firefox 98, Chrome 93 or Safari 15.4. The terminal works without a browser.';
  }
}, 5000);
