(function () {
  var box = document.getElementById('filter');
  var chosen = { family: '', climate: '' };
  function show() {
    ['family', 'climate'].forEach(function (what) {
      document.querySelectorAll('[data-' + what + ']').forEach(function (part) {
        part.hidden = chosen[what] !== '' && part.getAttribute('data-' + what) !== chosen[what];
      });
    });
  }
  ['family', 'climate'].forEach(function (what) {
    var label = document.createElement('label');
    var list = document.createElement('select');
    var seen = {};
    label.textContent = what === 'family' ? 'Family ' : 'Climate ';
    list.add(new Option('all', ''));
    document.querySelectorAll('.map[data-' + what + '],.map th[data-' + what + ']').forEach(function (part) {
      var id = part.getAttribute('data-' + what);
      if (!seen[id]) {
        seen[id] = true;
        list.add(new Option(id.replace(/-/g, ' '), id));
      }
    });
    list.addEventListener('change', function () {
      chosen[what] = list.value;
      show();
    });
    label.appendChild(list);
    box.appendChild(label);
  });
})();
