### Facts: Wish
### The UV index to aim at.

wish-label = Aim for
wish-told = UV index { UVI($wanted, form: "range") }{ $known ->
    [none] { $about ->
        [none] , as you asked
       *[some] , as you asked for about { UVI($about, form: "given") }
      }
   *[some] {" "}({ $known })
  }
wish-others-label = Others say
wish-tender = half of what its kind gets, as it is pale or very young: our judgement
