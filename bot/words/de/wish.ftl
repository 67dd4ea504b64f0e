### Welcher UV-Index das Ziel ist.

wish-label = Ziel
wish-told = UV-Index { UVI($wanted, form: "range") }{ $known ->
    [none] { $about ->
        [none] , wie gewünscht
       *[some] , du wolltest etwa { UVI($about, form: "given") }
      }
   *[some] {" "}({ $known })
  }
wish-others-label = Andere sagen
wish-tender = die Hälfte wie sonst bei seiner Art, weil es blass oder sehr jung ist: unser Urteil
