using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Prices;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Catalogue;

/// <summary>The fields of practices and treatments.</summary>
/// <param name="knowledge">The knowledge.</param>
/// <param name="today">The day from which the age of a check is counted.</param>
internal sealed class ActionFields(KnowledgeBase knowledge, DateOnly today)
{
    private readonly Names _names = new(knowledge);

    public ImmutableArray<Field> Of(Practice practice)
    {
        Fields fields = Common(practice)
            .Add("kind", _names.Word("practice-kind", practice.Kind))
            .Add("marks", practice.Tags.Select(tag => _names.Word("practice-tag", tag)))
            .Add("works on", _names.Word("works-on", practice.WorksOn))
            .Add("under an enclosed cover", practice.EnclosedOk ? "yes" : "no")
            .AddEach("on another ground", practice.Wordings.Select(Wording))
            .AddEach("cost on another ground", practice.CostOnGrounds.Select(cost => CostOn(cost, practice)))
            .AddEach("reduces", practice.Effects.Select(Effect))
            .AddEach("does not work", practice.NotWhere);
        return RecordFields.Ending(fields, practice, knowledge);
    }

    public ImmutableArray<Field> Of(Treatment treatment)
    {
        Fields fields = Common(treatment)
            .AddEach("active", treatment.Actives.Select(Active))
            .Add("formulation", _names.Word("formulation", treatment.Formulation))
            .Add("role", _names.Word("role", treatment.Role))
            .Add("acts on", treatment.ActsOn.Select(word => _names.Word("acts-on", word)))
            .Add("applied as", treatment.Applied.Select(word => _names.Word("application", word)))
            .Add("reaches the crop", treatment.ReachesCrop ? "yes" : "no")
            .Add("allowed under", treatment.AllowedUnder)
            .Add("enclosed use", _names.Word("enclosed-use", treatment.EnclosedUse))
            .Add("crops known to tolerate it", treatment.CropsTolerant)
            .Add("crops known to be hurt", treatment.CropsHurt)
            .Add("where edible crops stand", MayBeUsed(treatment.EdibleOk))
            .Add("organic production", MayBeUsed(treatment.OrganicOk));
        AddTiming(fields, treatment);
        AddHandling(fields, treatment);
        fields.AddEach("rating", treatment.Ratings.Select(Rating));
        fields.AddEach("scale", treatment.Ratings.Select(rating => rating.Scale).Distinct().Select(Scale));
        fields.AddEach("table last checked", StaleTables(treatment));
        fields.AddEach("before any chemical", Safety.StandingLines);
        return RecordFields.Ending(fields, treatment, knowledge);
    }

    private static void AddTiming(Fields fields, Treatment treatment) =>
        fields
            .Add("wait after potting", Days(treatment.WaitAfterPottingDays))
            .Add("wait after potting bare-root stock", Days(treatment.WaitBareRootDays))
            .Add("house stays open afterwards", Days(treatment.DaysBeforeCovering))
            .Add("not at", treatment.NotAt)
            .Add("water in", treatment.WaterInMm is { } water ? $"{Figures.Range(water)} mm" : null)
            .Add("water in within", treatment.WaterInWithinDays is { } within ? $"{Figures.Plain(within)} days" : null)
            .Add("no rain for", treatment.RainFreeHours is { } dry ? $"{Figures.Range(dry)} h" : null)
            .Add("not above", treatment.NotAboveC is { } hot ? $"{Figures.Plain(hot)} C" : null)
            .Add("not below", treatment.NotBelowC is { } cold ? $"{Figures.Plain(cold)} C" : null)
            .Add("wants", treatment.Wants)
            .Add("on dry leaves only", treatment.DryLeaves ? "yes" : null)
            .Add("keeps weeds down", treatment.ResidualWeeks is { } weeks ? $"{Figures.Range(weeks)} weeks" : null)
            .Add("again after", Days(treatment.RepeatAfterDays))
            .Add("uses a year", treatment.UsesPerYear is { } uses ? Figures.Plain(uses) : "see the label")
            .Add(
                "most in a year",
                treatment.YearlyLimitKgAiHa is { } limit ? $"{Figures.Plain(limit)} kg a.i./ha" : null
            )
            .AddEach("rate", treatment.Rates.Select(Rate));

    private void AddHandling(Fields fields, Treatment treatment) =>
        fields
            .Add(
                "strength",
                treatment.Strength is { } strength ? $"{Figures.Plain(strength.Value)} {strength.Unit}" : null
            )
            .Add("volatile", _names.Word("volatility", treatment.Volatile))
            .Add("stops roots", treatment.RootInhibitor ? "yes" : "no")
            .Add("endangers water life", treatment.WaterHazard ? "yes" : "no")
            .Add("drift endangers neighbours", treatment.DriftHazard ? "yes" : "no")
            .Add("restricted entry", _names.RestrictedEntry(treatment))
            .Add("signal word", treatment.SignalWord ?? "see the label")
            .Add("protective equipment", treatment.ProtectiveEquipment ?? "see the label")
            .Add("restricted use", treatment.RestrictedUse ? "yes: certified applicators only" : "no")
            .Add("status", _names.Word("status", treatment.Status))
            .Add("last checked", Checks.Told(treatment.Checked, today));

    private Fields Common(CatalogueAction action) =>
        new Fields()
            .Add("what", action.What)
            .Add("when", _names.Word("when", action.When))
            .Add("possible", action is Practice practice ? _names.Word("possible", practice.Possible) : null)
            .Add("one of", Works.JobOf(action) is { } job ? _names.Word("one-of", job) : null)
            .Add("where", action.Places)
            .Add("with stock", action.StockStages)
            .Add("needs one of", action.NeedsEquipment)
            .Add("cost", action.Cost is { } cost ? Cost(cost, action) : null)
            .Add("product", action is Treatment treatment ? Product(treatment) : null)
            .AddEach("mind", action.Cautions);

    // By dose and price where a price of its actives is known.
    private string? Product(Treatment treatment)
    {
        string[] prices =
        [
            .. treatment
                .Actives.Select(active => knowledge.Ingredients.Values.FirstOrDefault(one => one.Name == active.Name))
                .Select(active => active is null ? "" : ProductPrices.IdOf(active.Id, treatment.Form))
                .Where(knowledge.Prices.ContainsKey),
        ];
        return prices.Length == 0 ? null : $"by dose and ground, at the prices {Listing.And(prices)}";
    }

    private static string Cost(CostDrivers cost, CatalogueAction action)
    {
        string?[] parts =
        [
            cost.MaterialsUsd is { } usd ? $"materials ${Figures.Range(usd)}" : null,
            cost.DepthCm is { } depth ? $"materials {Figures.Range(depth)} cm deep" : null,
            cost.LabourHours is { } hours ? $"labour {Figures.Range(hours)} h" : null,
            cost.Work is { } work ? $"labour by the working time '{work}'" : null,
            "for 1000 pots of the usual width, or 100 m² of floor",
        ];
        string price = cost.Price is { } id ? $"; materials follow the price '{id}'" : "";
        string grows = Growth(action is Treatment ? CostGrowth.Ground : cost.GrowsWith);
        return $"{string.Join(", ", parts.OfType<string>())}{price}; {grows}{Figures.Keys(cost.Sources)}";
    }

    private static string Growth(CostGrowth growth) =>
        growth switch
        {
            CostGrowth.Weeding => "grows with the pots, and the work with their size",
            CostGrowth.Surface => "grows with the surface of the mix",
            CostGrowth.Ground => "grows with the ground",
            CostGrowth.Nothing => "the same however many pots there are",
            _ => "grows with the pots",
        };

    private string Wording(WhatOnGround wording) => $"{_names.Word("ground", wording.Ground)}: {wording.What}";

    private string CostOn(CostOnGround cost, Practice practice) =>
        $"{_names.Word("ground", cost.Ground)}: {Cost(cost.Cost, practice)}";

    private string Effect(PublishedEffect effect)
    {
        string on = effect.On == "all" ? "all weeds" : _names.Word("weed-kind", _names.Weed(effect.On));
        string note = effect.Note is { } text ? $" ({text})" : "";
        return $"{on} by {Figures.Range(effect.ReductionPercent)} %{note}{Figures.Keys(effect.Sources)}";
    }

    private string Active(Active active)
    {
        string group = active.Group is { } code ? $", group {code}" : ", no group";
        string site = active.SiteOfAction is { } word ? $", {_names.Word("site-of-action", word)}" : "";
        string was = ActiveFields.Older(active.Was, active.WasNumber) is { } old ? $" (was {old})" : "";
        string share = active.Percent is { } percent ? $", {Figures.Plain(percent)} %" : "";
        return $"{active.Name}{group}{site}{was}{share}";
    }

    private static string Rating(Rating rating)
    {
        string note = rating.Note is { } words ? $" ({words})" : "";
        return $"{rating.On}: {rating.Grade}, published as '{rating.Raw}' on {rating.Scale}{note}"
            + Figures.Keys(rating.Sources);
    }

    private IEnumerable<string> StaleTables(Treatment treatment) =>
        knowledge
            .RatingTables.Where(table => Checks.IsStale(table.Checked, today))
            .Where(table => table.Rows.Any(row => row.Treatment == treatment.Id))
            .Select(table => $"{table.Id}, {Checks.Told(table.Checked, today)}");

    private string Scale(string scale) => $"{scale}: {_names.Word("rating-scale", scale)}";

    private static string Rate(Rate rate)
    {
        string?[] parts =
        [
            rate.Product is { } product ? $"{Figures.Range(product)} {rate.Unit}" : null,
            rate.AiLbPerAcre is { } active ? $"{Figures.Range(active)} lb a.i./acre" : null,
            rate.Note,
        ];
        return string.Join("; ", parts.Where(part => part is not null)) + Figures.Keys(rate.Sources);
    }

    private static string MayBeUsed(bool? known) =>
        known switch
        {
            true => "may be used",
            false => "must not be used",
            null => "see the label",
        };

    private static string Days(decimal? days) => days is { } known ? $"{Figures.Plain(known)} days" : "see the label";
}
