### Gründe, erst einmal aufzuhören

guard-stop-nearer_than_safe_distance = Halt: Das wäre näher, als die Angabe auf der Lampe erlaubt.
guard-stop-above_holder_mark = Halt: Die Lampe hat mehr Watt, als auf ihrer Fassung steht. Geh nie darüber.
guard-stop-wood_too_hot = Halt: Holz, das { TEMP($wood) } oder mehr behält, kann mit der Zeit Feuer fangen. Schalte aus und gib ihm mehr Abstand.
guard-stop-lamp_within_reach = Halt: Ein Tier, das an die Lampe kommt, verbrennt sich eines Tages. Setz einen Schutzkorb davor, oder häng sie außer Reichweite.
guard-short-nearer_than_safe_distance = Nie näher, als die Lampe erlaubt.
guard-short-above_holder_mark = Nie mehr Watt als auf der Fassung.
guard-short-wood_too_hot = Heißes Holz kann Feuer fangen.
guard-short-lamp_within_reach = Das Tier kann sich verbrennen.
guard-first-nearer_than_safe_distance = Lass die Lampe aus, bis sie so weit weg hängt, wie es auf ihr steht.
guard-first-above_holder_mark = Schalte die Lampe aus, lass sie abkühlen und nimm eine mit höchstens so viel Watt, wie auf der Fassung stehen, oder eine Fassung, die dafür reicht.
guard-first-wood_too_hot = Schalte die Lampe aus, und bring Lampe und Holz so weit auseinander, dass kein Holz an { TEMP($wood) } herankommt.
guard-first-lamp_within_reach = Lass die Lampe aus, bis ein Schutzkorb davor ist oder das Tier nicht mehr herankommt.
