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
  function name(part) {
    return (part.querySelector('caption') || part).textContent.replace(/ \(\d+\)\s*$/, '');
  }
  ['family', 'climate'].forEach(function (what) {
    var label = document.createElement('label');
    var list = document.createElement('select');
    var seen = {};
    label.textContent = box.getAttribute('data-label-' + what) + ' ';
    list.add(new Option(box.getAttribute('data-label-all'), ''));
    document.querySelectorAll('.map[data-' + what + '],.map th[data-' + what + ']').forEach(function (part) {
      var id = part.getAttribute('data-' + what);
      if (!seen[id]) {
        seen[id] = true;
        list.add(new Option(name(part), id));
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
