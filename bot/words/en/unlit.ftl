### Facts: Unlit

unlit-title = No lamp for { NAME($animal, form: "a") }
unlit-none = { CAP($animal, form: "a") } needs no lamp, no heater and no UV.
unlit-weak = { CAP($animal, form: "a") } needs little UV or none. No tube gets too weak for it.
unlit-do = What it needs: needs { $called }
