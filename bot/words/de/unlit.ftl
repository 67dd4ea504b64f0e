### Ein Tier, das keine UV-Lampe braucht

unlit-title = Keine Lampe für { NAME($animal, form: "acc") }
unlit-none = { CAP($animal, form: "a") } braucht keine Lampe, keinen Heizer und kein UV.
unlit-weak = { CAP($animal, form: "a") } braucht wenig UV oder keins. Zu schwach wird keine Röhre.
unlit-do = Was es braucht: needs { $called }
