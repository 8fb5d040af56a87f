namespace InstallPacket.Drawings;

/// <summary>What speaks for a drawing: texts by id in the language of the job, numbers in its units.</summary>
public interface IWords
{
    /// <summary>BCP 47 tag of the language.</summary>
    string Language { get; }

    /// <summary>Prints numbers with the signs and units of the job.</summary>
    UnitPrinter Print { get; }

    /// <summary>The text with this id.</summary>
    /// <param name="id">Its id, such as <c>figures.aim.title</c>.</param>
    /// <param name="values">Values that the text may name: texts, numbers in the plan's units, lists of texts, or null.</param>
    /// <exception cref="Exception">No such text, or it asks for a value that is not among these; the message names file, line and
    /// column.</exception>
    string Say(string id, params ReadOnlySpan<(string Name, object? Value)> values);

    /// <summary>A set phrase of the plan, such as <c>fly lead O1</c>, in the language; a name of the job stays as it is.</summary>
    /// <param name="phrase">The phrase.</param>
    string Name(string phrase);

    /// <summary>A list of texts in one line, as the language joins them.</summary>
    /// <param name="items">The texts.</param>
    string List(IEnumerable<string> items);
}
